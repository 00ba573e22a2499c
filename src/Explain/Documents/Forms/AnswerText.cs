namespace Explain;

/// <summary>Says answers: = where exact, ≈ where rounded, bounds rounded outwards.</summary>
internal sealed class AnswerText(Speaker speaker, IClaims claims)
{
    private static readonly MathSign About = new("≈");

    /// <summary>AB ≈ 2.90 m, all of it standing out; where the quantity is words, its value; where there is no number, what was proved.</summary>
    public Items<Inline> Equation(Answer answer, AnswerValue value)
    {
        if (value.Value is not { } number || answer.For.Kind == GoalKind.Count) return [new Strong(Claim(value))];
        Symbol? symbol = QuantityOf(answer, value);
        if (symbol is DistanceToLine or Bearing or Measure or CircleMeasure) return Sentence(symbol, number, value);
        return [new Strong([new MathRun(Row(symbol is null ? Amount(null, number, value) : [speaker.Math.Symbol(symbol), .. Amount(symbol, number, value)]))])];
    }

    /// <summary>The value alone: 137 m; 68π m² ≈ 214 m² where an exact form is asked for.</summary>
    public MathPiece Alone(Value number, AnswerValue value, Symbol? of = null) => Row(Amount(of, number, value)[1..]);

    /// <summary>Whether the value printed is not the value itself.</summary>
    public static bool IsRounded(AnswerValue value) => value.Value is { } number && RoundingOf(value, number) is var rule
        && !(rule.IsExactAlone && number.Exact is not null) && !NumberText.Rounded(number, rule).IsExact;

    /// <summary>Whether an exact form is asked for and there is none.</summary>
    public static bool LacksExactForm(AnswerValue value) => value.Value is { Exact: null } number && RoundingOf(value, number).Exact;

    public static Rounding RoundingOf(AnswerValue value, Value number) => value.Round ?? Rounding.Default(number.Unit);

    /// <summary>Between 133.2 m and 141.0 m.</summary>
    public (Items<Inline> Lower, Items<Inline> Upper) Ends(Bounds bounds, AnswerValue value, Symbol? of = null)
    {
        Rounding rule = RoundingOf(value, bounds.Lower);
        return (End(NumberText.LowerBound(bounds.Lower, rule), bounds.Lower, rule, of), End(NumberText.UpperBound(bounds.Upper, rule), bounds.Upper, rule, of));
    }

    /// <summary>The quantity that an answer gives: the one asked for, or the one that the claim found.</summary>
    public Symbol? QuantityOf(Answer answer, AnswerValue value) => value.Item is null && answer.For.Wanted is { } wanted ? wanted : claims.QuantityOf(value.From) ?? (value.Item is { } item ? QuantityGrammar.Read(item) : answer.For.Wanted);

    /// <summary>The number as an answer, with its unit.</summary>
    public MathPiece Rounded(Value number, Rounding rule) => Shown(NumberText.Rounded(number, rule), rule, number.Unit);

    /// <summary>A number in the unit that the rule gives it, split into units or into fractions where the rule wants it.</summary>
    private MathPiece Shown(Shown shown, Rounding rule, Unit unit) => rule is { Parts.Count: > 0 } or { Kind: RoundingKind.Nearest, Fractions: true }
        ? new MixedAmount(speaker.Math).Of(shown, rule.Parts.Count > 0 ? rule.Parts : [rule.UnitFor(unit)], rule.Kind == RoundingKind.Nearest && rule.Fractions)
        : speaker.Math.Number(shown, rule.UnitFor(unit));

    /// <summary>The distance from T to PQ is about 137 m.</summary>
    private Items<Inline> Sentence(Symbol symbol, Value number, AnswerValue value) => speaker.Say(
        IsRounded(value) && Amount(symbol, number, value)[0] == About ? AnswerWords.IsAbout(symbol, "") : AnswerWords.Is(symbol, ""),
        ("what", Quantity(symbol)), ("value", [new Strong([new MathRun(Alone(number, value, symbol))])]));

    /// <summary>The quantity in words, a line by its name in the story: the distance from T to the track.</summary>
    public Items<Inline> Quantity(Symbol symbol) => symbol is DistanceToLine distance
        ? speaker.Say(AnswerWords.DistanceToLine(distance.From, distance.To)) : speaker.Say(symbol);

    private MathPiece[] Amount(Symbol? symbol, Value number, AnswerValue value)
    {
        Rounding rule = RoundingOf(value, number);
        Shown shown = NumberText.Rounded(number, rule);
        MathPiece rounded = ThreeFigures.Of(symbol, Shown(shown, rule, number.Unit));
        MathSign equal = MathBuilder.Sign(Relation.Equal);
        if (!rule.Exact || number.Exact is null) return [shown.IsExact ? equal : About, rounded];
        MathPiece exact = speaker.Math.InRoots(number, rule.Fractions);
        return rule.IsExactAlone || shown.IsExact ? [equal, exact] : [equal, exact, About, rounded];
    }

    private Items<Inline> Claim(AnswerValue value) => claims.Find(value.From) is { } claim ? speaker.Say(claim.Says) : [];

    private Items<Inline> End(Shown shown, Value value, Rounding rule, Symbol? of) => [new MathRun(ThreeFigures.Of(of, Shown(shown, rule, value.Unit)))];

    private static MathPiece Row(MathPiece[] pieces) => pieces.Length == 1 ? pieces[0] : new MathRow([.. pieces], MathLevel.Relation);
}
