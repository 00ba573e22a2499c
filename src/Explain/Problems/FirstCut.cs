namespace Explain;

/// <summary>Where the first cut of a shape goes: to a corner, or to a point on a side.</summary>
/// <param name="Corner">The corner, or the end of the side that the distance is measured from.</param>
/// <param name="Side">The side; null when the cut goes to the corner.</param>
/// <param name="Distance">How far from the corner; null when the cut goes to it.</param>
internal sealed record FirstCut(Point Corner, Line? Side, Expr? Distance)
{
    /// <summary>Reads <c>A</c> or <c>on AB, 3 cm from A</c>; null when the text is neither.</summary>
    public static FirstCut? Read(string text)
    {
        if (Tokens.Read(text) is not { } tokens) return null;
        if (tokens is [{ Kind: TokenKind.Name } corner]) return Points(corner, 1) is { } one ? new(one[0], null, null) : null;
        int from = Array.FindLastIndex(tokens, t => t.Is("from"));
        if (from != tokens.Length - 2 || tokens is not [{ Text: "on" }, { Kind: TokenKind.Name } side, { Text: "," }, _, _, ..]) return null;
        if (Points(side, 2) is not { } ends || Points(tokens[^1], 1) is not { } end || !ends.Contains(end[0])) return null;
        return TermReader.Read(tokens.AsSpan(3..from)) is Quantity { Unit: { Power: 1, IsAngle: false }, Amount.Sign: > 0 } distance
            ? new(end[0], new Line(ends[0], ends[1]), distance) : null;
    }

    private static Items<Point>? Points(TextToken name, int count) =>
        name.Kind == TokenKind.Name && PointNames.Distinct(name.Text) is { } points && points.Count == count ? points : null;
}
