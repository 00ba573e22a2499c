using System.Globalization;

namespace Explain.Tests.Solving;

/// <summary>A baseline and the angles at its ends, drawn as coordinates: the far point's distances must come out again, and bounds must hold every corner.</summary>
public sealed class DrawnBaselines
{
    private static readonly int Draws = Effort.Of(50, 1000);

    public static TheoryData<string, int, int> Kinds => new() { { "acute", 10, 89 }, { "right", 90, 90 }, { "obtuse", 91, 165 } };

    [Theory]
    [MemberData(nameof(Kinds))]
    public void GiveTheDistancesOfTheFarPoint(string kind, int least, int greatest)
    {
        Random random = new(kind.Length);
        for (int i = 0; i < Draws; i++)
        {
            int atP = random.Next(least, greatest + 1), atQ = random.Next(5, 175 - atP), length = random.Next(10, 500);
            (double x, double y) = FarPoint(length, atP, atQ);
            SolveResult result = Asked(atP, atQ, length, "", "PT", "QT", "distance from T to PQ");
            Assert.True(result is Solved, $"{length} m, {atP}°, {atQ}°: {string.Join(" ", Ask.Codes(result))}");
            double[] drawn = [double.Hypot(x, y), double.Hypot(length - x, y), y];
            string[] find = ["PT", "QT", "distance from T to PQ"];
            for (int k = 0; k < find.Length; k++) Assert.Equal(drawn[k], Assert.Single(Ask.Values(result, find[k])), drawn[k] * 1e-9);
            Assert.Contains(((Solved)result).Solution.Parts.SelectMany(p => p.Passages), p => p.Use == PassageUse.Check && p.Steps.Count > 0);
        }
    }

    [Fact]
    public void HaveBoundsThatHoldEveryMeasurementWithin()
    {
        Random random = new(3);
        for (int i = 0; i < Draws; i++)
        {
            int atP = random.Next(20, 120), atQ = random.Next(10, 170 - atP), length = random.Next(50, 500);
            SolveResult result = Asked(atP, atQ, length, " ± 0.5", "bounds of distance from T to PQ");
            Assert.True(result is Solved, $"{length} m, {atP}°, {atQ}°: {result}");
            Solved solved = (Solved)result;
            Bounds bounds = solved.Solution.Parts[0].Answers[0].Values[0].Bounds!;
            double lower = bounds.Lower.Number, upper = bounds.Upper.Number;
            Assert.All(Enumerable.Range(0, 200), _ => Assert.InRange(FarPoint(length + Off(random), atP + Off(random), atQ + Off(random)).Y, lower * (1 - 1e-12), upper * (1 + 1e-12)));
            // The cotangent falls as its angle grows, so the distance grows with each measurement.
            Assert.Equal(FarPoint(length - 0.5, atP - 0.5, atQ - 0.5).Y, lower, lower * 1e-9);
            Assert.Equal(FarPoint(length + 0.5, atP + 0.5, atQ + 0.5).Y, upper, upper * 1e-9);
        }
    }

    private static double Off(Random random) => random.Next(3) switch { 0 => -0.5, 1 => 0.5, _ => random.NextDouble() - 0.5 };

    private static SolveResult Asked(int atP, int atQ, int length, string within, params string[] find) => Ask.Text(
        "inaccessible distance", "PQT is a triangle",
        [("PQ", Typed(length, " m", within)), ("angle QPT", Typed(atP, "°", within)), ("angle PQT", Typed(atQ, "°", within))], find);

    private static string Typed(int value, string unit, string within) =>
        value.ToString(CultureInfo.InvariantCulture) + unit + (within.Length == 0 ? "" : within + unit);

    /// <summary>The far point from P at the origin, Q on the x-axis: where the two sight lines meet, by their slopes.</summary>
    private static (double X, double Y) FarPoint(double baseline, double atP, double atQ)
    {
        double p = atP * Math.PI / 180, q = atQ * Math.PI / 180;
        double y = baseline / (Math.Cos(p) / Math.Sin(p) + Math.Cos(q) / Math.Sin(q));
        return (y * Math.Cos(p) / Math.Sin(p), y);
    }
}
