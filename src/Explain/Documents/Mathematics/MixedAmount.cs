using Fractions;

namespace Explain;

/// <summary>Lays out numbers in several units and parts of a unit as fractions: 4 ft 8.9 in, 8 7/8 in, 62° 30′.</summary>
/// <param name="math">Lays out numbers.</param>
internal sealed class MixedAmount(MathBuilder math)
{
    /// <summary>A number as shown, in the last of the units, split into all of them.</summary>
    public MathPiece Of(Shown shown, Items<Unit> units, bool fractions)
    {
        List<MathPiece> row = [];
        foreach ((Fraction number, Unit unit) in MixedUnits.Split(Decimals.Read(shown.Digits), units))
        {
            if (row.Count > 0) row.Add(new MathWords(" "));
            int places = unit == units[^1] ? Decimals.PlacesIn(shown.Digits) : 0;
            row.Add(MathBuilder.WithUnit(fractions ? Vulgar(number) : math.Number(shown with { Digits = Decimals.Write(number, places) }, Unit.None), unit, units: true));
        }

        return row.Count == 1 ? row[0] : new MathRow([.. row], MathLevel.Product);
    }

    /// <summary>8 7/8: a whole number and a fraction less than 1.</summary>
    private static MathPiece Vulgar(Fraction number)
    {
        Fraction whole = new(Whole.Floor(number)), rest = (number - whole).Reduce();
        if (rest.IsZero) return Digits(whole);
        MathFraction part = new(Digits(new(rest.Numerator)), Digits(new(rest.Denominator)));
        return whole.IsZero ? part : new MathRow([Digits(whole), new MathWords(" "), part], MathLevel.Atom);
    }

    private static MathNumber Digits(Fraction whole) => new(Decimals.Write(whole, 0), Continues: false);
}
