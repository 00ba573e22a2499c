namespace Explain;

/// <summary>Holds a value against the kind of its quantity: unit, sign, size of an angle.</summary>
internal static class ValueCheck
{
    private static readonly Exact Straight = Exact.Of(180), Full = Exact.Of(360);

    /// <summary>What is wrong with a value of a quantity; null when nothing is.</summary>
    public static Fault? Of(Problem problem, Symbol of, string typed, GivenValue value)
    {
        QuantityKind kind = QuantityKinds.Of(of), found = QuantityKinds.Of(value.Unit);
        if (of is Letter) return null;
        if (kind != found) return found == QuantityKind.Number ? MissingUnit(problem, kind, typed, value.Typed, value) : WrongUnit(of, kind, found, typed, value);
        return Within(problem, kind, typed, value) ?? (kind == QuantityKind.Angle ? Angle(of, typed, value) : kind == QuantityKind.Number ? null : Positive(typed, value));
    }

    /// <summary>What is wrong with a length that is no quantity of the figure; null when nothing is.</summary>
    public static Fault? OfLength(Problem problem, string typed, GivenValue value)
    {
        QuantityKind found = QuantityKinds.Of(value.Unit);
        return found == QuantityKind.Number ? MissingUnit(problem, QuantityKind.Length, typed, value.Typed, value)
            : found != QuantityKind.Length ? Wrong(value.Typed, found, typed, QuantityKind.Length, ProblemPhrases.WriteALength(Plain(value)))
            : Within(problem, QuantityKind.Length, typed, value) ?? Positive(typed, value);
    }

    private static Fault? Within(Problem problem, QuantityKind kind, string typed, GivenValue value)
    {
        if (value.Within is not Quantity within) return null;
        GivenValue margin = new(within, null, FormulaText.Number(within));
        QuantityKind found = QuantityKinds.Of(within.Unit);
        if (found == kind && value.Number?.Rational is null) return new(ErrorCodes.UnreadableNumber, ProblemPhrases.NotMeasured(typed, value.Typed), ProblemPhrases.WriteTheMeasurement());
        return found == kind ? Positive(typed, margin)
            : found == QuantityKind.Number ? MissingUnit(problem, kind, typed, "± " + margin.Typed, margin)
            : Wrong(margin.Typed, found, typed, kind, StatementPhrases.WriteAValue());
    }

    private static Fault MissingUnit(Problem problem, QuantityKind kind, string typed, string text, GivenValue value)
    {
        Unit? usual = kind == QuantityKind.Angle ? Unit.Degree : problem.Given.Select(g => GivenValue.UnitIn(g.Value)).FirstOrDefault(u => QuantityKinds.Of(u) == QuantityKind.Length);
        string bracketed = value.Is is Quantity or SymbolUse || text.EndsWith(')') ? text : "(" + text + ")";
        string With(Unit unit) => bracketed + (unit.IsAngle ? "" : " ") + (kind == QuantityKind.Area ? unit.To(2) : unit).Symbol;
        Phrase remedy = usual is null ? ProblemPhrases.WriteAUnit(With(Unit.Centimetre)) : StatementPhrases.DidYouMean(With(usual));
        return new(ErrorCodes.MissingUnit, ProblemPhrases.NoUnit(typed, text), remedy);
    }

    private static Fault WrongUnit(Symbol of, QuantityKind kind, QuantityKind found, string typed, GivenValue value)
    {
        string number = Plain(value);
        Phrase remedy = (kind, of) switch
        {
            (QuantityKind.Angle, Angle a) when found == QuantityKind.Length => ProblemPhrases.WriteAnAngleOrTheLength(number + "°", a.Vertex, a.Second, $"{a.Vertex.Name}{a.Second.Name}: {value.Typed}"),
            (QuantityKind.Angle, _) => StatementPhrases.Write(number + "°"),
            (QuantityKind.Area, _) when found == QuantityKind.Length => StatementPhrases.Write(number + " " + value.Unit.To(2).Symbol),
            (QuantityKind.Length, _) when found == QuantityKind.Angle && InFeet(value.Typed) is { } feet => StatementPhrases.DidYouMean(feet),
            (QuantityKind.Length, _) when found == QuantityKind.Angle => ProblemPhrases.WriteALength(number),
            (QuantityKind.Length, _) when found == QuantityKind.Area => StatementPhrases.Write(number + " " + value.Unit.Symbol.TrimEnd('²')),
            (QuantityKind.Number, _) => StatementPhrases.Write(number),
            _ => StatementPhrases.WriteAValue(),
        };
        return Wrong(value.Typed, found, typed, kind, remedy);
    }

    /// <summary>5′ 3″ in a length stands for feet and inches; null where no such sign is typed.</summary>
    private static string? InFeet(string typed)
    {
        TextToken[] tokens = Tokens.Read(typed) ?? [];
        return tokens.Any(t => t.Is("°")) || !tokens.Any(t => t.Text is "′" or "″") ? null
            : string.Join(' ', tokens.Select(t => t.Text switch { "′" => "ft", "″" => "in", var other => other })).Replace(" / ", "/", StringComparison.Ordinal);
    }

    private static Fault Wrong(string value, QuantityKind found, string typed, QuantityKind kind, Phrase remedy) =>
        new(ErrorCodes.WrongUnit, ProblemPhrases.WrongUnit(value, QuantityKinds.Name(found), typed, QuantityKinds.Name(kind)), remedy);

    private static string Plain(GivenValue value) => value.Is switch
    {
        Quantity q => FormulaText.Number(new(q.Amount, Unit.None)),
        Product p => "(" + FormulaText.Write(p.Left, English.UnitedKingdom) + ")",
        _ => value.Typed,
    };

    private static Fault? Positive(string typed, GivenValue value) =>
        value.Number is { Sign: <= 0 } ? new(ErrorCodes.NotPositive, ProblemPhrases.NotPositive(typed, value.Typed), ProblemPhrases.MoreThanNothing()) : null;

    private static Fault? Angle(Symbol of, string typed, GivenValue value)
    {
        if (value.Number is not { } amount || Exact.Multiply(amount, Exact.Of(value.Unit.Factor)) is not { } degrees) return null;
        if (of is Bearing) return degrees.Sign < 0 || degrees.CompareTo(Full) >= 0 ? Impossible(ProblemPhrases.NoSuchBearing(typed, value.Typed), ProblemPhrases.BearingsAre()) : null;
        if (degrees.Sign <= 0) return Impossible(ProblemPhrases.AngleNotPositive(typed, value.Typed), ProblemPhrases.CheckTheAngle());
        bool reflex = of is Angle { Reflex: true };
        if (reflex) return degrees.CompareTo(Straight) <= 0 || degrees.CompareTo(Full) >= 0 ? Impossible(ProblemPhrases.NotReflex(typed, value.Typed), ProblemPhrases.CheckTheAngle()) : null;
        return degrees.CompareTo(Straight) < 0 ? null
            : Impossible(ProblemPhrases.AngleTooLarge(typed, value.Typed), degrees == Straight && of is Angle a ? ProblemPhrases.SayInLine([a.First, a.Vertex, a.Second]) : ProblemPhrases.SayReflex(typed));
    }

    private static Fault Impossible(Phrase message, Phrase remedy) => new(ErrorCodes.ImpossibleAngle, message, remedy);
}
