using CsCheck;

namespace Explain.Tests.Placing;

/// <summary>Figures of several triangles drawn from coordinates, described by measurements and placed again.</summary>
public sealed class FigureModelTests
{
    private const int Bits = 192;

    private static readonly Gen<(int, int, int, int)> Angles = Gen.Select(Gen.Int[20, 80], Gen.Int[20, 80], Gen.Int[20, 80], Gen.Int[20, 80]).Where(a => Math.Abs(a.Item1 - a.Item3) > 2 && Math.Abs(a.Item2 - a.Item4) > 2);

    [Fact]
    public void TwoPointsSeenFromOneBaseline_AreAsFarApartAsCoordinatesSay() => Angles.Sample(a =>
    {
        foreach (bool same in new[] { true, false })
        {
            Layout layout = Assert.Single(Layouts($"PQT is a triangle; PQS is a triangle; T and S are on {(same ? "the same side" : "opposite sides")} of PQ",
                ("PQ", "200 m"), ("angle QPT", a.Item1 + "°"), ("angle PQT", a.Item2 + "°"), ("angle QPS", a.Item3 + "°"), ("angle PQS", a.Item4 + "°")));
            ((double tx, double ty), (double sx, double sy)) = (Seen(a.Item1, a.Item2), Seen(a.Item3, a.Item4));
            double apart = Math.Sqrt(Math.Pow(tx - sx, 2) + Math.Pow(same ? ty - sy : ty + sy, 2));
            Assert.Equal(apart, layout.Measure(Drawn.Of("TS"))!.Value.Nearest(), apart * 1e-9);
        }
    }, iter: 30);

    [Fact]
    public void WithoutASide_BothFiguresAreDrawn() =>
        Assert.Equal(2, Layouts("PQT is a triangle; PQS is a triangle", ("PQ", "200 m"), ("angle QPT", "40°"), ("angle PQT", "50°"), ("angle QPS", "60°"), ("angle PQS", "35°")).Count);

    [Fact]
    public void ATowerSeenFromTwoPlaces_HasItsHeight() => Gen.Select(Gen.Int[5, 40], Gen.Int[2, 40], Gen.Int[10, 90]).Sample((far, more, apart) =>
    {
        Layout layout = Assert.Single(Layouts("D, B, A are in line; CD is perpendicular to DA", ("AB", apart + " m"), ("angle CAD", far + "°"), ("angle CBD", far + more + "°")));
        double height = apart / (1 / Tan(far) - 1 / Tan(far + more));
        Assert.Equal(height, layout.Measure(Drawn.Of("CD"))!.Value.Nearest(), height * 1e-9);
    }, iter: 30);

    [Fact]
    public void BearingsComeBack() => Gen.Select(Gen.Int[0, 359], Gen.Int[0, 359], Gen.Int[10, 90], Gen.Int[10, 90]).Where(b => Math.Abs(b.Item1 - b.Item2) % 180 != 0).Sample((first, second, ab, bc) =>
    {
        Layout layout = Assert.Single(Layouts("ABC is a triangle", ("AB", ab + " km"), ("the bearing of B from A", first + "°"), ("BC", bc + " km"), ("the bearing of C from B", second + "°")));
        double x = ab * Sin(first) + bc * Sin(second), y = ab * Sin(90 - first) + bc * Sin(90 - second);
        double bearing = (Math.Atan2(x, y) * 180 / Math.PI + 360) % 360, measured = layout.Measure(Drawn.Of("the bearing of C from A"))!.Value.Nearest();
        Assert.Equal(0, Math.IEEERemainder(bearing - measured, 360), 1e-6);
    }, iter: 60);

    [Fact]
    public void WhatTheMeasurementsLeaveOpen_IsNotDrawn() =>
        Assert.Null(new FigureModel().Layouts(Drawn.Problem("PQT is a triangle; PQS is a triangle", [("PQ", "200 m"), ("angle QPT", "40°"), ("angle PQT", "50°"), ("angle QPS", "60°")]), Bits));

    private static Items<Layout> Layouts(string figure, params (string, string)[] given) => new FigureModel().Layouts(Drawn.Problem(figure, given), Bits)!.Value;

    private static (double, double) Seen(int atP, int atQ)
    {
        double height = 200 / (1 / Tan(atP) + 1 / Tan(atQ));
        return (height / Tan(atP), height);
    }

    private static double Tan(double degrees) => Math.Tan(degrees * Math.PI / 180);

    private static double Sin(double degrees) => Math.Sin(degrees * Math.PI / 180);
}
