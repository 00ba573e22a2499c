namespace Explain;

/// <summary>Reads how far lengths and angles may be off: "nearest 0.1 m", "0.5 m and 0.5°".</summary>
internal static class MarginEntry
{
    public static Problem AddAccuracy(Problem problem, string text, Position at) => Add(problem, text, at, mayBeNearest: true, (p, q) => q.Unit.IsAngle
        ? p with { AnglesWithin = q } : p with { LengthsWithin = q });

    public static Problem AddTolerance(Problem problem, string text, Position at) => Add(problem, text, at, mayBeNearest: false, (p, q) => q.Unit.IsAngle
        ? p with { AngleTolerance = q } : p with { LengthTolerance = q });

    private static Problem Add(Problem problem, string text, Position at, bool mayBeNearest, Func<Problem, Quantity, Problem> put)
    {
        Quantity? before = null;
        foreach (string part in text.Split(" and "))
        {
            if (Margin(part.Trim().TrimStart('±').TrimStart(), mayBeNearest, out Fault? fault) is not { } margin) return problem.With(fault!, at);
            if (before?.Unit.IsAngle == margin.Unit.IsAngle) return problem.With(new(ErrorCodes.GivenTwice, ProblemPhrases.MarginTwice(text), ProblemPhrases.WriteAMargin()), at);
            problem = put(problem, before = margin);
        }

        return problem;
    }

    /// <summary>A value measured to the nearest step may be wrong by half of it.</summary>
    private static Quantity? Margin(string text, bool mayBeNearest, out Fault? fault)
    {
        fault = null;
        if (mayBeNearest && RoundingReader.Nearest(text) is { } step && Exact.Multiply(step.Amount, Exact.Of(new Fractions.Fraction(1, 2))) is { } half)
            return Checked(new(half, step.Unit), text, out fault);
        if (!ValueReader.TryRead(text, out GivenValue? value, out fault)) return null;
        if (value is { Is: Quantity number, Within: null }) return Checked(number, text, out fault);
        fault = new(ErrorCodes.UnreadableNumber, StatementPhrases.NotAValue(text), ProblemPhrases.WriteAMargin());
        return null;
    }

    private static Quantity? Checked(Quantity margin, string text, out Fault? fault)
    {
        fault = QuantityKinds.Of(margin.Unit) switch
        {
            QuantityKind.Number => new(ErrorCodes.MissingUnit, ProblemPhrases.NoUnitAtAll(text), ProblemPhrases.WriteAMargin()),
            QuantityKind.Area => new(ErrorCodes.WrongUnit, ProblemPhrases.NeitherLengthNorAngle(text), ProblemPhrases.WriteAMargin()),
            _ when margin.Amount.Sign <= 0 => new(ErrorCodes.NotPositive, ProblemPhrases.MarginNotPositive(text), ProblemPhrases.MoreThanNothing()),
            _ => null,
        };
        return fault is null ? margin : null;
    }
}
