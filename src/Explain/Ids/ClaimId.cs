namespace Explain;

/// <summary>The name of a premise or a step: g1 given, f1 read from the figure, a1 assumed, s5 a step, s9.2 a cell or a case of s9. Does not depend on wording, detail or output.</summary>
/// <param name="Name">The name. Two ids are equal when their names are, letter by letter.</param>
public readonly record struct ClaimId(string Name)
{
    /// <summary>Whether it names a given.</summary>
    internal bool IsGiven => Name.StartsWith('g');

    /// <summary>The name itself.</summary>
    public override string ToString() => Name;
}
