using System.Globalization;

namespace Explain.Tests.Solving;

/// <summary>
/// Triangles drawn as coordinates: their areas, perimeters, heights and circles are asked for, or one of these is given and a side or an angle is asked
/// for. The solver's own referee has drawn each once more; here the answers are held against the coordinates of the test.
/// </summary>
public sealed class DrawnMeasures
{
    private static readonly int Draws = Effort.Of(3, 10, 1000);

    private static readonly string[][] Givens = [["AB", "BC", "CA"], ["AB", "CA", "angle BAC"], ["AB", "angle BAC", "angle ABC"], ["BC", "angle BAC", "angle ABC"], ["angle BAC", "CA", "BC"]];

    public static TheoryData<string> Goals =>
    [
        "area of ABC", "perimeter of ABC", "half the perimeter of ABC", "distance from C to AB", "distance from A to BC", "radius of the inscribed circle of ABC",
        "radius of the circle through ABC", "diameter of the circle through ABC",
    ];

    public static TheoryData<string, string> Reversed => new()
    {
        { "area of ABC, AB, CA", "BC" }, { "area of ABC, AB, angle BAC", "CA" }, { "area of ABC, angle BAC, angle ABC", "AB" }, { "perimeter of ABC, AB, CA", "angle BAC" },
        { "perimeter of ABC, angle BAC, angle ABC", "AB" }, { "perimeter of ABC, AB, angle BAC", "BC" }, { "distance from C to AB, AB, CA", "BC" }, { "distance from C to AB, CA, BC", "AB" },
        { "distance from C to AB, angle BAC, angle ABC", "AB" }, { "distance from C to AB, AB, angle BAC", "BC" }, { "distance from C to AB, distance from A to BC, AB", "CA" },
        { "radius of the circle through ABC, AB, BC", "CA" }, { "radius of the circle through ABC, angle BAC, angle ABC", "AB" }, { "diameter of the circle through ABC, AB, angle BAC", "CA" },
        { "radius of the inscribed circle of ABC, angle BAC, angle ABC", "AB" }, { "radius of the inscribed circle of ABC, area of ABC, AB", "half the perimeter of ABC" },
    };

    [Theory]
    [MemberData(nameof(Goals))]
    public void WhatIsAsked_ComesFromTheCoordinates(string goal)
    {
        Random random = new(goal.Length);
        for (int i = 0; i < Draws; i++)
        {
            Triangle drawn = Triangle.Draw(random);
            SolveResult result = Ask.Triangle(Givens[i % Givens.Length].Select(g => (g, drawn.Typed(g))), goal);
            Assert.True(result is Solved, Said(drawn, Givens[i % Givens.Length], result));
            Assert.Contains(Ask.Values(result, goal), v => Math.Abs(v - drawn.Measure(goal)) <= 1e-6 * drawn.Measure(goal));
        }
    }

    [Theory]
    [MemberData(nameof(Reversed))]
    public void WhatIsGiven_LeadsBackToTheTriangle(string given, string goal)
    {
        Random random = new(given.Length);
        for (int i = 0; i < Draws; i++)
        {
            Triangle drawn = Triangle.Draw(random);
            string[] of = given.Split(", ");
            SolveResult result = Ask.Triangle(of.Take(3).Select(g => (g, drawn.Typed(g))), goal);
            Assert.True(result is Solved, Said(drawn, of, result));
            Assert.Contains(Ask.Values(result, goal), v => Math.Abs(v - drawn.Measure(goal)) <= 1e-5 * drawn.Measure(goal));
        }
    }

    private static string Said(Triangle drawn, string[] given, SolveResult result) =>
        string.Join("; ", given.Select(g => g + ": " + drawn.Typed(g))) + " " + string.Join(" ", Ask.Codes(result)) + (result is Failed failed ? string.Join(" ", failed.Findings) : "");

    /// <summary>A at the origin, B on the axis, C anywhere above that gives angles of 8° or more.</summary>
    private sealed record Triangle(double B, double X, double Y)
    {
        public static Triangle Draw(Random random)
        {
            while (true)
            {
                Triangle drawn = new(random.Next(20, 200), random.Next(-100, 250), random.Next(10, 200));
                if (new[] { "angle BAC", "angle ABC", "angle ACB" }.All(a => drawn.Measure(a) is > 8 and < 164)) return drawn;
            }
        }

        private double Area => B * Y / 2;

        private double Perimeter => B + Math.Sqrt(X * X + Y * Y) + Math.Sqrt((X - B) * (X - B) + Y * Y);

        public double Measure(string of) => of switch
        {
            "AB" => B,
            "BC" => Math.Sqrt((X - B) * (X - B) + Y * Y),
            "CA" => Math.Sqrt(X * X + Y * Y),
            "angle BAC" => Math.Atan2(Y, X) * 180 / Math.PI,
            "angle ABC" => Math.Atan2(Y, B - X) * 180 / Math.PI,
            "angle ACB" => 180 - Measure("angle BAC") - Measure("angle ABC"),
            "area of ABC" => Area,
            "perimeter of ABC" => Perimeter,
            "half the perimeter of ABC" => Perimeter / 2,
            "distance from C to AB" => Y,
            "distance from A to BC" => 2 * Area / Measure("BC"),
            "radius of the inscribed circle of ABC" => 2 * Area / Perimeter,
            "radius of the circle through ABC" => Centre,
            _ => 2 * Centre,
        };

        /// <summary>The distance from A to the point that is as far from B and from C.</summary>
        private double Centre => Math.Sqrt(B * B / 4 + Math.Pow((X * X + Y * Y - B * X) / (2 * Y), 2));

        public string Typed(string of)
        {
            string number = Measure(of).ToString("0.##########", CultureInfo.InvariantCulture);
            return number + (of.StartsWith("angle", StringComparison.Ordinal) ? "°" : of.StartsWith("area", StringComparison.Ordinal) ? " m²" : " m");
        }
    }
}
