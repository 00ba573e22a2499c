namespace Explain;

/// <summary>The name of a library theorem.</summary>
/// <param name="Name">The name. Two ids are equal when their names are, letter by letter.</param>
public readonly record struct TheoremId(string Name)
{
    /// <summary>The name itself.</summary>
    public override string ToString() => Name;
}
