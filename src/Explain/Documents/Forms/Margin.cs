using Fractions;

namespace Explain;

/// <summary>How far a printed answer can be from the truth: the greater distance to its bounds, rounded up.</summary>
internal static class Margin
{
    public static Shown Of(Value value, Bounds bounds, Rounding rule)
    {
        Fraction printed = NumberText.RoundedNumber(value, rule);
        Unit unit = rule.UnitFor(value.Unit);
        int places = int.Max(0, NumberText.PlacesFor(value, rule) + 1);
        Fraction below = printed - NumberText.LowerNumber(bounds.Lower, rule), above = NumberText.UpperNumber(bounds.Upper, rule) - printed;
        return NumberText.Cut(Explain.Value.Of(Exact.Of(below > above ? below : above), unit), new NumberStyle(places, 1));
    }
}
