namespace Explain;

/// <summary>Reads the scale of drawings: 1 cm to 10 m, 1 : 1000.</summary>
internal static class ScaleEntry
{
    public static Problem Add(Problem problem, string text, Position at)
    {
        string[] sides = text.Contains(':') ? text.Split(':') : text.Split(" to ");
        return sides.Length == 2 && Side(sides[0]) is { } paper && Side(sides[1]) is { } reality && QuantityKinds.Of(paper.Unit) == QuantityKinds.Of(reality.Unit)
            ? problem with { Scale = new(paper, reality, text) }
            : problem.With(new(ErrorCodes.UnreadableStatement, ProblemPhrases.NotAScale(text), ProblemPhrases.WriteAScale()), at);
    }

    private static Quantity? Side(string text) =>
        ValueReader.TryRead(text, out GivenValue? value, out _) && value is { Is: Quantity { Amount.Sign: > 0, Unit: { IsAngle: false, Power: < 2 } } side, Within: null } ? side : null;
}
