namespace Explain;

/// <summary>Something given that is no quantity of the figure: a number of shares, where the first cut goes, the length of a tether.</summary>
/// <param name="Key">What is given: <c>shares</c>, <c>first cut</c>, <c>tether</c>. A list gives one entry an item.</param>
/// <param name="Text">Its value as typed, without the ±.</param>
/// <param name="At">Where it stands.</param>
public sealed record Extra(string Key, string Text, Position At)
{
    /// <summary>Its value, where it is a number or a length; null otherwise.</summary>
    public Expr? Value { get; init; }

    /// <summary>By how much it may be wrong either way; null when nothing is said.</summary>
    public Expr? Within { get; init; }
}
