namespace Explain;

/// <summary>Says how answers were rounded: 3 significant figures; lengths to …, angles to …</summary>
internal static class RoundingNote
{
    /// <summary>The note in brackets; nothing where no value was rounded.</summary>
    public static Items<Inline> Of(IEnumerable<AnswerValue> values, Speaker speaker)
    {
        (Unit Unit, Rounding Rule)[] rounded = [.. values.Where(AnswerText.IsRounded).Select(v => (v.Value!.Unit, AnswerText.RoundingOf(v, v.Value!).ForDecimals(v.Value!.Unit)))];
        if (rounded.Length == 0) return [];
        Phrase[] rules = [.. rounded.Select(r => Say(r.Rule)).Distinct()];
        return [new WordRun("("), .. values.Any(AnswerText.LacksExactForm) ? [.. speaker.Say(RoundingWords.NoExactForm()), new WordRun("; ")] : (Items<Inline>)[], .. Text(), new WordRun(")")];

        Items<Inline> Text() => rules.Length == 1 ? speaker.Say(RoundingWords.Note(rules[0]))
            : Speaker.Separate([.. rounded.Select(r => Of(r.Unit, Say(r.Rule))).Distinct().Select(p => speaker.Say(p))]);
    }

    private static Phrase Of(Unit unit, Phrase rule) => unit switch
    {
        { IsAngle: true } => RoundingWords.Angles(rule),
        { Power: 0 } => RoundingWords.Ratios(rule),
        { Power: 1 } => RoundingWords.Lengths(rule),
        _ => RoundingWords.Areas(rule),
    };

    private static Quotient Fraction(Fractions.Fraction step) => new(Number(new(step.Numerator)), Number(new(step.Denominator)));

    private static Quantity Number(Fractions.Fraction number) => new(Exact.Of(number), Unit.None);

    public static Phrase Say(Rounding rule) => rule switch
    {
        { IsExactAlone: true } => RoundingWords.Exact(),
        { Kind: RoundingKind.Nearest, Unit: { Power: 1 } unit } when rule.Step == Fractions.Fraction.One => RoundingWords.NearestUnit(UnitNames.Of(unit)),
        { Kind: RoundingKind.Nearest, Fractions: true, Unit: { } unit } => RoundingWords.NearestPart(Fraction(rule.Step.Reduce()), UnitNames.Of(unit)),
        { Kind: RoundingKind.Nearest } => RoundingWords.Nearest(new Quantity(Exact.Of(rule.Step), rule.Unit ?? Unit.None)),
        { Kind: RoundingKind.SignificantFigures } => RoundingWords.Figures(rule.Digits),
        { Digits: 0 } => RoundingWords.Whole(),
        { Digits: 1 } => RoundingWords.OnePlace(),
        { Digits: 2 } => RoundingWords.TwoPlaces(),
        { Digits: 3 } => RoundingWords.ThreePlaces(),
        _ => RoundingWords.Places(rule.Digits),
    };
}
