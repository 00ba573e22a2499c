namespace Explain;

/// <summary>The name of a line of a theorem's proof.</summary>
/// <param name="Name">The name. Two ids are equal when their names are, letter by letter.</param>
public readonly record struct LineId(string Name)
{
    /// <summary>The name itself.</summary>
    public override string ToString() => Name;
}
