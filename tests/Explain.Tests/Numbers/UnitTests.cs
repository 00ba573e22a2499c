using Explain.Tests.Published;
using Fractions;
using UnitsNet;
using UnitsNet.Units;

namespace Explain.Tests.Numbers;

public sealed class UnitTests
{
    private static readonly Dictionary<string, LengthUnit> Lengths = new()
    {
        ["mm"] = LengthUnit.Millimeter, ["cm"] = LengthUnit.Centimeter, ["m"] = LengthUnit.Meter, ["km"] = LengthUnit.Kilometer,
        ["in"] = LengthUnit.Inch, ["ft"] = LengthUnit.Foot, ["yd"] = LengthUnit.Yard, ["mi"] = LengthUnit.Mile,
    };

    private static readonly Dictionary<string, AreaUnit> Areas = new()
    {
        ["mm"] = AreaUnit.SquareMillimeter, ["cm"] = AreaUnit.SquareCentimeter, ["m"] = AreaUnit.SquareMeter, ["km"] = AreaUnit.SquareKilometer,
        ["in"] = AreaUnit.SquareInch, ["ft"] = AreaUnit.SquareFoot, ["yd"] = AreaUnit.SquareYard, ["mi"] = AreaUnit.SquareMile,
    };

    private static readonly Dictionary<string, AngleUnit> Angles = new()
    {
        ["°"] = AngleUnit.Degree, ["′"] = AngleUnit.Arcminute, ["″"] = AngleUnit.Arcsecond,
    };

    [Fact]
    public void Each_factor_agrees_with_UnitsNet_to_15_figures()
    {
        int pairs = 0;
        foreach (Unit from in Unit.Table)
        {
            foreach (Unit to in Unit.Table.Where(from.SameKind))
            {
                double ours = from.FactorTo(to).ToDouble();
                Near(from.IsAngle ? UnitConverter.Convert(1, Angles[from.Symbol], Angles[to.Symbol]) : UnitConverter.Convert(1, Lengths[from.Symbol], Lengths[to.Symbol]), ours);
                if (!from.IsAngle) Near(UnitConverter.Convert(1, Areas[from.Symbol], Areas[to.Symbol]), from.To(2).FactorTo(to.To(2)).ToDouble());
                pairs++;
            }
        }

        Assert.Equal(64 + 9, pairs);
    }

    [Fact]
    public void Conversions_are_exact()
    {
        Value inch = Value.Of(Exact.One, Unit.Inch).In(Unit.Centimetre);
        Assert.Equal(new Fraction(127, 50), inch.Exact!.Rational);
        Assert.Equal(new Shown("2.54", false, true), NumberText.Cut(inch, NumberStyle.For(Unit.Centimetre)));
        Exact feet = Exact.Add(Value.Of(Exact.Of(5), Unit.Foot).In(Unit.Centimetre).Exact!, Value.Of(Exact.Of(3), Unit.Inch).In(Unit.Centimetre).Exact!)!;
        Assert.Equal(new Shown("160.02", false, true), NumberText.Cut(Value.Of(feet, Unit.Centimetre), NumberStyle.For(Unit.Centimetre)));
        Value root = Value.Of(Exact.Root(Exact.Of(2))!, Unit.Metre).In(Unit.Millimetre);
        Assert.Equal("1000√2", root.Exact!.ToString());
        Value unknown = new Value(null, Trigonometry.Sin(62, 192), Unit.Foot).In(Unit.Yard);
        Assert.True(unknown.True.Overlaps(Trigonometry.Sin(62, 192) * new Fraction(1, 3)));
        Assert.Throws<ArgumentException>(() => inch.In(Unit.Degree));
        Assert.Throws<ArgumentException>(() => Unit.Metre.To(2).FactorTo(Unit.Metre));
    }

    [Theory]
    [InlineData("mm", "mm")]
    [InlineData("m^2", "m²")]
    [InlineData("m²", "m²")]
    [InlineData("yd", "yd")]
    [InlineData("mi^2", "mi²")]
    [InlineData("deg", "°")]
    [InlineData("'", "′")]
    [InlineData("\"", "″")]
    public void Units_are_read(string typed, string symbol) => Assert.Equal(symbol, Unit.Parse(typed)!.Symbol);

    [Theory]
    [InlineData("furlong")]
    [InlineData("M")]
    [InlineData("°²")]
    [InlineData("deg^2")]
    [InlineData("m^3")]
    [InlineData("²")]
    [InlineData("^2")]
    public void What_is_no_unit_is_not_read(string typed) => Assert.Null(Unit.Parse(typed));

    [Fact]
    public void Units_are_calculated()
    {
        Unit m = Unit.Metre, square = m.To(2);
        Assert.Equal(square, m.Times(m));
        Assert.Equal(m, square.Per(m));
        Assert.Equal(Unit.None, m.Per(m));
        Assert.Equal(m, m.Times(Unit.None));
        Assert.Equal(m, Unit.None.Times(m));
        Assert.Equal("m³", square.Times(m)!.Symbol);
        Assert.Equal(Unit.None, m.To(0));
        Assert.Null(m.Times(Unit.Degree));
        Assert.Null(Unit.Degree.Times(Unit.Degree));
        Assert.Null(Unit.Degree.Per(m));
        Assert.Equal(Unit.Degree, Unit.Degree.Times(Unit.None));
        Assert.Equal(Unit.None, Unit.Degree.Per(Unit.Minute));
        Assert.Null(Unit.None.Per(m));
        Assert.False(m.SameKind(square));
        Assert.False(Unit.Degree.SameKind(m));
        Assert.True(m.SameKind(Unit.Inch));
        Assert.True(m != Unit.Foot);
        Assert.False(m.Equals((object)"m"));
    }

    [Fact]
    public void Published_factors_are_ours()
    {
        string[] known = ["UNI-003.1", "UNI-003.2", "UNI-004.1", "UNI-005.1", "UNI-006.1", "UNI-009.1", "UNI-010.1", "UNI-015.1", "UNI-021.1"];
        IReadOnlyList<PublishedRow> rows = PublishedRow.All("published-units");
        Assert.Equal(23, rows.Count);
        foreach (PublishedRow row in rows.Where(r => known.Contains(r.Id))) Assert.True(Agrees(row), row.Id);
        Assert.Equal(known.Length, rows.Count(r => known.Contains(r.Id)));
    }

    [Theory]
    [InlineData("UNI-001.1", 0, 1, 0)]
    [InlineData("UNI-002.1", 0, 0, 1)]
    [InlineData("UNI-017.1", 4, 0, 0)]
    public void Published_radians_are_ours(string id, int degrees, int minutes, int seconds)
    {
        Fraction angle = degrees + new Fraction(minutes, 60) + new Fraction(seconds, 3600);
        string expected = PublishedRow.All("published-units").Single(r => r.Id == id).Expected;
        Assert.Equal(ExactReader.Read(expected.Replace(" rad", "", StringComparison.Ordinal)), Exact.Multiply(Exact.Of(angle / 180), Exact.Pi));
    }

    [Fact]
    public void Published_minutes_and_seconds_are_ours()
    {
        PublishedRow row = PublishedRow.All("published-units").Single(r => r.Id == "UNI-019.1");
        Exact sum = Exact.Add(Exact.Of(4), Exact.Add(Value.Of(Exact.Of(30), Unit.Minute).In(Unit.Degree).Exact!, Value.Of(Exact.Of(18), Unit.Second).In(Unit.Degree).Exact!)!)!;
        Assert.Equal(row.Expected, NumberText.Cut(Value.Of(sum, Unit.Degree), NumberStyle.For(Unit.Degree)).Digits + "°");
    }

    /// <summary>Rows such as "1 in in mm", "55 yd in ft" and "minutes in 1°": the printed number is the factor, within its tolerance.</summary>
    private static bool Agrees(PublishedRow row)
    {
        string[] words = row.Find.Split(' ');
        string expected = row.Expected.Split(' ')[0];
        if (words[0] is "minutes" or "seconds")
            return ExactReader.Read(expected).Rational == (words[0] == "minutes" ? Unit.Degree.FactorTo(Unit.Minute) : Unit.Minute.FactorTo(Unit.Second));
        Fraction ours = ExactReader.Read(words[0]).Rational!.Value * Unit.Parse(words[1])!.FactorTo(Unit.Parse(words[3])!);
        Fraction tolerance = row.Tolerance == "exact" ? 0 : ExactReader.Read(row.Tolerance).Rational!.Value;
        return (ExactReader.Read(expected).Rational!.Value - ours).Abs() <= tolerance;
    }

    private static void Near(double expected, double actual) => Assert.InRange(actual / expected, 1 - 1e-15, 1 + 1e-15);
}
