namespace Explain;

/// <summary>The name of a rule of the rule book, in the trade's term, such as sine-rule.</summary>
/// <param name="Name">The name. Two ids are equal when their names are, letter by letter.</param>
public readonly record struct RuleId(string Name)
{
    /// <summary>The name itself.</summary>
    public override string ToString() => Name;
}
