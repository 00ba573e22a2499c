using System.Globalization;

namespace Explain.Tests.Solving;

/// <summary>Measurements of one triangle typed to nine decimal places, so that what is found again differs from what was given in the last figures only.</summary>
public sealed class ManyFigures
{
    [Theory]
    [InlineData("AB, CA, angle BAC", "BC")]
    [InlineData("AB, BC, angle BAC", "CA")]
    [InlineData("AB, BC, angle ACB", "angle BAC")]
    [InlineData("BC, CA, angle BAC", "angle ABC")]
    [InlineData("AB, BC, CA", "angle ABC")]
    [InlineData("AB, angle BAC, angle ABC", "BC")]
    public void AreSolved(string given, string goal)
    {
        Random random = new(given.Length + goal.Length);
        for (int i = 0; i < Effort.Of(3, 15, 300); i++)
        {
            double b = random.Next(4, 12), x = random.Next(1, 9), y = random.Next(2, 9);
            SolveResult result = Ask.Triangle(given.Split(", ").Select(g => (g, Typed(g, b, x, y))), goal);
            Assert.True(result is Solved, $"{b} {x} {y}: {string.Join(" ", Ask.Codes(result))} {(result is Failed failed ? string.Join(" ", failed.Findings) : "")}");
            Assert.Contains(Ask.Values(result, goal), v => Math.Abs(v - Measure(goal, b, x, y)) < 1e-5 * v);
        }
    }

    private static string Typed(string of, double b, double x, double y) =>
        Measure(of, b, x, y).ToString("0.000000000", CultureInfo.InvariantCulture) + (of.StartsWith("angle", StringComparison.Ordinal) ? "°" : " cm");

    private static double Measure(string of, double b, double x, double y) => of switch
    {
        "AB" => b,
        "BC" => Math.Sqrt((x - b) * (x - b) + y * y),
        "CA" => Math.Sqrt(x * x + y * y),
        "angle BAC" => Math.Atan2(y, x) * 180 / Math.PI,
        "angle ABC" => Math.Atan2(y, b - x) * 180 / Math.PI,
        _ => 180 - (Math.Atan2(y, x) + Math.Atan2(y, b - x)) * 180 / Math.PI,
    };
}
