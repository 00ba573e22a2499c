namespace Explain;

/// <summary>The rules that may be used, each once. Immutable; safe to share.</summary>
public sealed class RuleBook
{
    private readonly Dictionary<RuleId, Schema> schemas;

    private RuleBook(Items<Rule> rules)
    {
        Rules = rules;
        schemas = rules.ToDictionary(r => r.Id, Schema.Of);
    }

    /// <summary>The rules of the library.</summary>
    public static RuleBook Standard { get; } = new(
        [.. TriangleRules.Book.All, .. AmbiguousCaseRules.Book.All, .. RightAngleRules.Book.All, .. IsoscelesRules.Book.All, .. InverseRules.Book.All, .. PerpendicularRules.Book.All, .. CountingRules.Book.All, .. AreaRules.Book.All, .. CircleRules.Book.All, .. AdjacentAngleRules.Book.All, .. BearingRules.Book.All, .. MeasurementRules.Book.All, .. QuadraticRules.Book.All]);

    /// <summary>The rules, in the order of the book.</summary>
    public Items<Rule> Rules { get; }

    /// <summary>The book with more rules at its end.</summary>
    /// <param name="rules">The rules; none may have the id of a rule already in the book.</param>
    /// <exception cref="ArgumentException">Two rules have one id, or a pattern cannot be read.</exception>
    public RuleBook With(Items<Rule> rules) => new([.. Rules, .. rules]);

    /// <summary>The rule of an id, such as <c>sine-rule</c>.</summary>
    /// <param name="id">The id.</param>
    /// <exception cref="KeyNotFoundException">The book has no such rule.</exception>
    public Rule this[string id] => schemas[new RuleId(id)].Rule;

    internal Schema? Find(RuleId id) => schemas.GetValueOrDefault(id);
}
