using Fractions;

namespace Explain;

/// <summary>Reads counts: shares, marks.</summary>
internal static class Count
{
    /// <summary>A whole number, 1 or more; null with what is wrong otherwise.</summary>
    public static Fraction? Read(string text, out Fault? fault)
    {
        if (!ValueReader.TryRead(text, out GivenValue? value, out fault) && fault.Code == ErrorCodes.TooLarge) return null;
        if (value is not { Within: null, Number.Rational: { } count } || value.Unit != Unit.None || !count.Denominator.IsOne)
            fault = new(ErrorCodes.UnreadableNumber, ProblemPhrases.NotACount(text), ProblemPhrases.WriteACount());
        else if (count <= 0) fault = new(ErrorCodes.NotPositive, ProblemPhrases.CountNotPositive(text), ProblemPhrases.WriteACount());
        else return count;
        return null;
    }
}
