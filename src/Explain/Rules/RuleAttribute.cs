namespace Explain;

/// <summary>
/// Declares a rule of the rule book. On a method that is also a <see cref="RelationAttribute">relation</see> the law is the
/// method's equality and each parameter is a role; on a class it declares a deduction, whose conclusion is <see cref="Then"/>.
/// Patterns are written in the grammar of problem files over pattern points, each standing for any point of a figure.
/// </summary>
/// <param name="id">The trade's term in lower case with hyphens, such as <c>sine-rule</c>; also the id of its wording.</param>
[AttributeUsage(AttributeTargets.Method | AttributeTargets.Class, AllowMultiple = true)]
public sealed class RuleAttribute(string id) : Attribute
{
    /// <summary>The rule's name.</summary>
    public string Id { get; } = id;

    /// <summary>What must hold. <c>"parallel: PQ ∥ RS"</c> names the condition as a role that every wording must mention.</summary>
    public string[] When { get; init; } = [];

    /// <summary>What then holds; for a relation this is the law.</summary>
    public string? Then { get; init; }

    /// <summary>Further roles that a wording may place, as <c>"foot: F"</c>, <c>"line: PQ"</c>, <c>"angle: angle QPT"</c>.</summary>
    public string[] Roles { get; init; } = [];

    /// <summary>Where the rule comes from.</summary>
    public string? Source { get; init; }

    /// <summary>How many marks a scheme gives it by default.</summary>
    public int Marks { get; init; } = 1;
}
