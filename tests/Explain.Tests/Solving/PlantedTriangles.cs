using System.Globalization;
using System.Numerics;
using Fractions;

namespace Explain.Tests.Solving;

/// <summary>Triangles planted exactly at a border between cases, and a billionth of a thousandth either side, through the whole solver: as many triangles as there are.</summary>
public sealed class PlantedTriangles
{
    private static readonly Fraction Hair = new(1, BigInteger.Pow(10, 12));

    private static int Draws => Effort.Of(4, 20, 100);

    [Fact]
    public void WhoseSideJustReaches_AreOne_AndTwoOrNoneAHairAway()
    {
        Random random = new(31);
        for (int i = 0; i < Draws; i++)
        {
            // sin 30° = sin 150° = 1/2: the height is half the other side.
            Fraction height = new(random.Next(1, 4000), 100);
            Assert.Equal(1, Count("30°", height * 2, height));
            Assert.Equal(2, Count("30°", height * 2, height + Hair));
            Assert.Equal(0, Count("30°", height * 2, height - Hair));
        }
    }

    [Fact]
    public void WhoseSideIsAsLongAsTheOther_AreOne_AndTwoAHairShorter()
    {
        Random random = new(32);
        for (int i = 0; i < Draws; i++)
        {
            Fraction side = new(random.Next(1, 4000), 100);
            string acute = (random.Next(10, 890) / 10m).ToString(CultureInfo.InvariantCulture) + "°", large = random.Next(90, 179).ToString(CultureInfo.InvariantCulture) + "°";
            Assert.Equal(1, Count(acute, side, side));
            Assert.Equal(2, Count(acute, side, side - Hair));
            Assert.Equal(1, Count(acute, side, side + Hair));
            Assert.Equal(0, Count(large, side, side));
            Assert.Equal(1, Count(large, side, side + Hair));
        }
    }

    [Fact]
    public void WithARightAngle_AreRight_AndAHairAwayAreNot()
    {
        Random random = new(33);
        for (int i = 0; i < Draws; i++)
        {
            int m = random.Next(2, 12), n = random.Next(1, m);
            Fraction p = m * m - n * n, q = 2 * m * n, r = m * m + n * n;
            Assert.Equal("90", Angle(p, q, r).Exact?.ToString());
            foreach (Fraction away in new[] { r - Hair, r + Hair })
            {
                Value angle = Angle(p, q, away);
                Assert.NotEqual("90", angle.Exact?.ToString());
                Assert.Equal(away > r, angle.True.Low > 90);
                Assert.Equal(away < r, angle.True.High < 90);
            }
        }
    }

    [Fact]
    public void ThatAreFlat_AreNone_AndAHairShorterAreOne()
    {
        Random random = new(34);
        for (int i = 0; i < Draws; i++)
        {
            Fraction p = new(random.Next(1, 4000), 100), q = new(random.Next(1, 4000), 100);
            Assert.Equal(0, Sides(p, q, p + q));
            Assert.Equal(0, Sides(p, q, p + q + Hair));
            Assert.Equal(1, Sides(p, q, p + q - Hair));
        }
    }

    /// <summary>The triangles that have the measurements, counted by the solver and by the lengths that it finds for the third side.</summary>
    private static int Count(string angle, Fraction beside, Fraction opposite)
    {
        (string, string)[] given = [("angle BAC", angle), ("AC", Metres(beside)), ("CB", Metres(opposite))];
        double counted = Assert.Single(Ask.Values(Ask.Triangle(given, "number of triangles"), "number of triangles"));
        SolveResult found = Ask.Triangle(given, "AB");
        Assert.Equal(counted, found is Solved ? Ask.Values(found, "AB").Length : 0);
        Assert.True(found is Solved or Refused, string.Join(" ", found is Failed failed ? failed.Findings : []));
        return (int)counted;
    }

    private static int Sides(Fraction p, Fraction q, Fraction r) =>
        (int)Assert.Single(Ask.Values(Ask.Triangle([("AB", Metres(p)), ("BC", Metres(q)), ("CA", Metres(r))], "number of triangles"), "number of triangles"));

    private static Value Angle(Fraction p, Fraction q, Fraction r)
    {
        SolveResult result = Ask.Triangle([("AB", Metres(p)), ("BC", Metres(q)), ("CA", Metres(r))], "angle ABC");
        return Assert.Single(((Solved)result).Solution.Parts[0].Answers[0].Values).Value!;
    }

    /// <summary>As a decimal of twelve places, which is exact for what is drawn here.</summary>
    private static string Metres(Fraction length) => ((decimal)length).ToString("0.############", CultureInfo.InvariantCulture) + " m";
}
