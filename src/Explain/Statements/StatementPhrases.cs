namespace Explain;

/// <summary>What is said of texts that cannot be read.</summary>
internal static partial class StatementPhrases
{
    [Phrase("error.unreadable-statement")]
    internal static partial Phrase NotAStatement(string typed);

    [Phrase("error.unreadable-quantity")]
    internal static partial Phrase NotAQuantity(string typed);

    [Phrase("remedy.nearest")]
    internal static partial Phrase NearestIs(string nearest);

    [Phrase("remedy.statements")]
    internal static partial Phrase StatementsAre();

    [Phrase("remedy.quantities")]
    internal static partial Phrase QuantitiesAre(string quantities);

    [Phrase("remedy.goals")]
    internal static partial Phrase GoalsAre(string goals);

    [Phrase("error.unreadable-number")]
    internal static partial Phrase NotAValue(string typed);

    [Phrase("error.unreadable-number.empty")]
    internal static partial Phrase NoValue();

    [Phrase("remedy.unreadable-number")]
    internal static partial Phrase WriteAValue();

    [Phrase("error.unreadable-number.comma")]
    internal static partial Phrase DecimalComma(string typed);

    [Phrase("error.unreadable-number.thousands")]
    internal static partial Phrase ThousandsComma(string typed);

    [Phrase("error.unreadable-number.letter")]
    internal static partial Phrase LetterInNumber(string typed, string part, string letter);

    [Phrase("error.too-large.number")]
    internal static partial Phrase NumberTooLarge(string typed, int limit);

    [Phrase("error.unknown-unit")]
    internal static partial Phrase UnknownUnit(string typed, string unit);

    [Phrase("remedy.units")]
    internal static partial Phrase Units(string units);

    [Phrase("remedy.write")]
    internal static partial Phrase Write(string instead);

    [Phrase("remedy.did-you-mean")]
    internal static partial Phrase DidYouMean(string instead);

    [Phrase("kind.length")]
    internal static partial Phrase ALength();

    [Phrase("kind.area")]
    internal static partial Phrase AnArea();

    [Phrase("kind.angle")]
    internal static partial Phrase AnAngle();

    [Phrase("kind.number")]
    internal static partial Phrase ANumber();
}
