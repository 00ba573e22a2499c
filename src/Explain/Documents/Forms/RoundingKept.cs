namespace Explain;

/// <summary>How many figures a value in working shows: at least four, and one more than any answer of the page.</summary>
internal static class RoundingKept
{
    private const int Least = 4;

    public static int Figures(IEnumerable<Answer> answers) => answers.SelectMany(a => a.Values)
        .Select(v => v.Round is { Kind: RoundingKind.SignificantFigures } rule ? rule.Digits + 1 : Least)
        .Append(Least).Max();
}
