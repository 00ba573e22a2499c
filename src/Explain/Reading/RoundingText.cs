namespace Explain;

/// <summary>Reads rules of rounding: 3 significant figures, 1 decimal place, nearest metre, exact.</summary>
internal static class RoundingText
{
    public static Rounding? Read(string text) => text.Split(' ') switch
    {
        [var n, "significant", "figure" or "figures"] => Count(n) is { } figures and > 0 ? new(RoundingKind.SignificantFigures, figures) : null,
        [var n, "decimal", "place" or "places"] => Count(n) is { } places ? new(RoundingKind.DecimalPlaces, places) : null,
        ["nearest", "metre"] or ["nearest", "meter"] => Step(Unit.Metre),
        ["nearest", "centimetre"] or ["nearest", "centimeter"] => Step(Unit.Centimetre),
        ["nearest", "degree"] => Step(Unit.Degree),
        _ => null,
    };

    private static Rounding Step(Unit unit) => new(RoundingKind.Nearest, 0) { Step = 1, Unit = unit };

    private static int? Count(string text) => text is [>= '0' and <= '9'] ? text[0] - '0' : null;
}
