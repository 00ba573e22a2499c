namespace Explain;

/// <summary>Adds a rounding rule for all answers, or for those of one kind.</summary>
internal static class RoundEntry
{
    public static Items<string> Kinds { get; } = ["lengths", "areas", "angles", "ratios"];

    public static Problem Add(Problem problem, string? of, string text, Position at)
    {
        if (RoundingReader.Read(text) is not { } rule)
            return problem.With(new(ErrorCodes.UnreadableStatement, ProblemPhrases.NotARounding(text), ProblemPhrases.Roundings()), at);
        QuantityKind? kind = of switch { "lengths" => QuantityKind.Length, "areas" => QuantityKind.Area, "angles" => QuantityKind.Angle, "ratios" => QuantityKind.Number, _ => null };
        bool wrong = kind is { } wanted && rule.Unit is { } unit && QuantityKinds.Of(unit) != wanted;
        return wrong
            ? problem.With(new(ErrorCodes.WrongUnit, ProblemPhrases.RoundingOfAnotherKind(text, of!), ProblemPhrases.Roundings()), at)
            : problem with { Round = problem.Round.With(new(of, rule)) };
    }
}
