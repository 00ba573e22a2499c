using CsCheck;
using Fractions;

namespace Explain.Tests.Placing;

/// <summary>Triangles drawn from whole coordinates, described by three measurements and placed again.</summary>
public sealed class TrianglePlacingTests
{
    private const int Bits = 192;

    private static readonly Gen<(int, int, int)> Sides = Gen.Select(Gen.Int[20, 300], Gen.Int[20, 300], Gen.Int[20, 300])
        .Where(t => t.Item1 + t.Item2 > t.Item3 && t.Item2 + t.Item3 > t.Item1 && t.Item3 + t.Item1 > t.Item2);

    [Fact]
    public void ThreeSidesComeBack() => Sides.Sample(t =>
    {
        Layout layout = Assert.Single(Drawn.Layouts("ABC is a triangle", ("AB", t.Item1 + " m"), ("BC", t.Item2 + " m"), ("CA", t.Item3 + " m")));
        Assert.True(layout.Measure(Drawn.Of("BC"))!.Value.Contains(t.Item2));
        Enclosure sum = layout.Measure(Drawn.Of("angle ABC"))!.Value + layout.Measure(Drawn.Of("angle BCA"))!.Value + layout.Measure(Drawn.Of("angle CAB"))!.Value;
        Assert.True(sum.Contains(180) && sum.Width < Fraction.Pow(10, -40));
        double half = (t.Item1 + t.Item2 + t.Item3) / 2.0, hero = Math.Sqrt(half * (half - t.Item1) * (half - t.Item2) * (half - t.Item3));
        Assert.Equal(hero, layout.Measure(new Measure(MeasureKind.Area, Drawn.Triangle))!.Value.Nearest(), hero * 1e-9);
        Assert.Equal(2 * hero / t.Item1, layout.Measure(Drawn.Of("distance from C to AB"))!.Value.Nearest(), hero * 1e-9);
    }, iter: 200);

    [Fact]
    public void EveryChoiceOfThreeFitsASine() => Gen.Select(Gen.Int[5, 120], Gen.Int[5, 50], Gen.Int[10, 200]).Sample((a, b, side) =>
    {
        double circle = side / Math.Sin(a * Math.PI / 180);
        foreach (Layout layout in Drawn.Layouts("ABC is a triangle", ("angle CAB", a + "°"), ("angle ABC", b + "°"), ("BC", side + " m")))
        {
            Assert.Equal(circle * Math.Sin(b * Math.PI / 180), layout.Measure(Drawn.Of("CA"))!.Value.Nearest(), circle * 1e-9);
            Assert.Equal(circle * Math.Sin((a + b) * Math.PI / 180), layout.Measure(Drawn.Of("AB"))!.Value.Nearest(), circle * 1e-9);
        }
    }, iter: 200);

    [Theory]
    [InlineData("38°", "2.5 m", "1.8 m", 2)]
    [InlineData("30°", "2 m", "1 m", 1)]
    [InlineData("30°", "2 m", "0.9 m", 0)]
    [InlineData("30°", "2 m", "2 m", 1)]
    [InlineData("30°", "2 m", "3 m", 1)]
    [InlineData("120°", "2 m", "2 m", 0)]
    [InlineData("120°", "2 m", "2.5 m", 1)]
    [InlineData("90°", "2 m", "2 m", 0)]
    public void ASwingingSideMeetsTheRayAsOftenAsItShould(string angle, string beside, string opposite, int count)
    {
        Assert.Equal(count, Drawn.Layouts("ABC is a triangle", ("angle BAC", angle), ("AC", beside), ("CB", opposite)).Count);
        Assert.Equal(count, Drawn.Layouts("ABC is a triangle; X is on AB produced", ("angle CAX", angle), ("AC", beside), ("CB", opposite)).Count);
    }

    [Theory]
    [InlineData("angle ABC is acute", 1)]
    [InlineData("angle ABC is obtuse", 1)]
    [InlineData("angle BAC is obtuse", 0)]
    public void WhatTheFigureSaysChoosesTheTriangle(string says, int count) =>
        Assert.Equal(count, Drawn.Layouts("ABC is a triangle; " + says, ("angle BAC", "38°"), ("AC", "2.5 m"), ("CB", "1.8 m")).Count);

    [Fact]
    public void AFootIsSquareToItsLine() => Sides.Sample(t =>
    {
        Layout layout = Drawn.Layouts("ABC is a triangle", ("AB", t.Item1 + " m"), ("BC", t.Item2 + " m"), ("CA", t.Item3 + " m"))[0];
        Layout more = layout.With((Place)StatementGrammar.Read("F is the foot of the perpendicular from C to AB")!)!;
        Assert.True(more.Measure(Drawn.Of("CF"))!.Value.Overlaps(more.Measure(Drawn.Of("distance from C to AB"))!.Value));
        if (t.Item2 * t.Item2 != t.Item1 * t.Item1 + t.Item3 * t.Item3 && t.Item3 * t.Item3 != t.Item1 * t.Item1 + t.Item2 * t.Item2)
            Assert.True(more.Measure(Drawn.Of("angle CFA"))!.Value.Contains(90));
    }, iter: 100);

    [Fact]
    public void TooMuchOrTooLittleIsSeen()
    {
        Assert.Empty(Drawn.Layouts("ABC is a triangle", ("AB", "3 m"), ("BC", "4 m"), ("CA", "5 m"), ("angle ABC", "89°")));
        Assert.Single(Drawn.Layouts("ABC is a triangle", ("AB", "3 m"), ("BC", "4 m"), ("CA", "5 m"), ("angle ABC", "90°")));
        Assert.Null(new FigureModel().Layouts(Drawn.Problem("ABC is a triangle", [("AB", "3 m"), ("BC", "4 m")]), Bits));
        Assert.Null(Drawn.Layouts("ABC is a triangle; X is on AB produced", ("AB", "3 m"), ("BC", "4 m"), ("CA", "5 m"))[0].Measure(Drawn.Of("BX")));
    }
}
