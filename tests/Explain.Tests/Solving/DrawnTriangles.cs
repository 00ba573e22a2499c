using System.Globalization;

namespace Explain.Tests.Solving;

/// <summary>Triangles drawn as coordinates; three of their measurements are given, the others must come out again.</summary>
public sealed class DrawnTriangles
{
    private static readonly int Draws = Effort.Of(25, 1000);

    public static TheoryData<string> Kinds => ["BC CA AB", "AB AC BAC", "AB BAC ABC", "BC BAC ABC"];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void GiveTheirOtherMeasurementsBack(string kind)
    {
        Random random = new(20_261_125);
        string[] all = ["BC", "CA", "AB", "angle BAC", "angle ABC", "angle BCA"];
        for (int i = 0; i < Draws; i++)
        {
            // Whole measurements, so that what is given is given exactly.
            Dictionary<string, double> drawn = kind == "BC CA AB" ? Sides(random) : kind == "AB AC BAC" ? TwoSides(random) : Angles(random, kind.StartsWith("BC", StringComparison.Ordinal));
            string[] given = [.. kind.Split(' ').Select(g => g.Length == 3 ? "angle " + g : g == "AC" ? "CA" : g)];
            string[] find = [.. all.Where(q => !given.Contains(q))];
            SolveResult result = Ask.Triangle(given.Select(g => (g, Typed(drawn[g], g))), find);
            Assert.True(result is Solved, string.Join(" ", given.Select(g => g + Typed(drawn[g], g))) + string.Join(" ", Ask.Codes(result)));
            foreach (string wanted in find) Assert.Equal(drawn[wanted], Assert.Single(Ask.Values(result, wanted)), drawn[wanted] * 1e-9);
        }
    }

    [Fact]
    public void WithTwoSidesAndAnAngleNotBetweenThem_HaveEveryCase()
    {
        Random random = new(7);
        for (int i = 0; i < Draws; i++)
        {
            int degrees = random.Next(5, 175), ac = random.Next(10, 200), cb = random.Next(10, 200);
            double a = degrees * Math.PI / 180, half = ac * Math.Cos(a), rest = half * half - ac * ac + cb * cb;
            double[] roots = rest < 0 ? [] : [.. new[] { half + Math.Sqrt(rest), half - Math.Sqrt(rest) }.Where(t => t > 1e-9).Distinct()];
            SolveResult result = Ask.Triangle([("angle BAC", $"{degrees}°"), ("AC", $"{ac} cm"), ("CB", $"{cb} cm")], "AB");
            if (roots.Length == 0) Assert.Equal(["does-not-reach"], Ask.Codes(result));
            else Assert.Equal(roots.Order(), Ask.Values(result, "AB").Order(), (x, y) => Math.Abs(x - y) <= 1e-9 * x);
        }
    }

    [Theory]
    [InlineData("30°", "10 cm", "5 cm", 1)]
    [InlineData("30°", "10 cm", "5.000000000001 cm", 2)]
    [InlineData("30°", "10 cm", "4.999999999999 cm", 0)]
    [InlineData("45°", "10 cm", "5√2 cm", 1)]
    [InlineData("60°", "2 cm", "√3 cm", 1)]
    [InlineData("40°", "10 cm", "10 cm", 1)]
    [InlineData("40°", "10 cm", "9.999999999999 cm", 2)]
    [InlineData("90°", "10 cm", "10 cm", 0)]
    [InlineData("90°", "10 cm", "10.000000000001 cm", 1)]
    [InlineData("120°", "10 cm", "10 cm", 0)]
    public void PlantedAtABorder_AreCountedExactly(string angle, string ac, string cb, int count)
    {
        SolveResult result = Ask.Triangle([("angle BAC", angle), ("AC", ac), ("CB", cb)], "AB");
        if (count == 0) Assert.Equal(["does-not-reach"], Ask.Codes(result));
        else Assert.Equal(count, Ask.Values(result, "AB").Length);
    }

    private static string Typed(double value, string of) => value.ToString("R", CultureInfo.InvariantCulture) + (of.StartsWith("angle", StringComparison.Ordinal) ? "°" : " cm");

    private static Dictionary<string, double> Sides(Random random)
    {
        int x = random.Next(1, 100), y = random.Next(1, 100), z = random.Next(1, 100);
        return Named(x + y, y + z, z + x);
    }

    private static Dictionary<string, double> TwoSides(Random random)
    {
        int c = random.Next(10, 200), b = random.Next(10, 200), degrees = random.Next(5, 175);
        double a = degrees * Math.PI / 180, dx = c - b * Math.Cos(a), dy = b * Math.Sin(a);
        return With(Named(Math.Sqrt(dx * dx + dy * dy), b, c), "angle BAC", degrees);
    }

    private static Dictionary<string, double> Angles(Random random, bool oppositeGiven)
    {
        int a = random.Next(5, 120), b = random.Next(5, 174 - a), side = random.Next(10, 200);
        double Sine(int d) => Math.Sin(d * Math.PI / 180);
        double diameter = side / Sine(oppositeGiven ? a : 180 - a - b);
        Dictionary<string, double> drawn = Named(diameter * Sine(a), diameter * Sine(b), diameter * Sine(180 - a - b));
        return With(With(With(drawn, "angle BAC", a), "angle ABC", b), oppositeGiven ? "BC" : "AB", side);
    }

    private static Dictionary<string, double> With(Dictionary<string, double> drawn, string of, double exactly)
    {
        drawn[of] = exactly;
        return drawn;
    }

    /// <summary>All six measurements from the coordinates of the corners.</summary>
    private static Dictionary<string, double> Named(double bc, double ca, double ab)
    {
        double x = (ab * ab + ca * ca - bc * bc) / (2 * ab), y = Math.Sqrt(Math.Max(0, ca * ca - x * x));
        double atA = Math.Atan2(y, x) * 180 / Math.PI, atB = Math.Atan2(y, ab - x) * 180 / Math.PI;
        return new() { ["BC"] = bc, ["CA"] = ca, ["AB"] = ab, ["angle BAC"] = atA, ["angle ABC"] = atB, ["angle BCA"] = 180 - atA - atB };
    }
}
