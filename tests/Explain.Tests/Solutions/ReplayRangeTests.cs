using Fractions;

namespace Explain.Tests.Solutions;

/// <summary>Givens with a range: every value that the claims may then have, and comparisons decided for all of them.</summary>
public sealed class ReplayRangeTests
{
    private static readonly (string Of, string From, string To)[] MastBox =
        [("JK", "95.5 m", "96.5 m"), ("angle MJK", "57.5°", "58.5°"), ("angle MKJ", "65.5°", "66.5°")];

    [Fact]
    public void OverTheBoxOfTheMeasurements_TheDistanceHasThePrintedBounds()
    {
        Solution mast = Plays.Solved("mast");
        Bounds printed = mast["bounds of distance from M to JK"].Only!.Bounds!;
        Replay replay = Within(mast, MastBox);
        Assert.Empty(replay.Broken);
        Enclosure found = replay[mast["distance from M to JK"].Only!.From]!.True;
        Assert.True(IsNear(found.Low, printed.Lower) && IsNear(found.High, printed.Upper));
        Assert.Equal(87.39, Math.Round(found.Low.ToDouble(), 2, MidpointRounding.ToNegativeInfinity));
        Assert.Equal(92.12, Math.Round(found.High.ToDouble(), 2, MidpointRounding.ToPositiveInfinity));
    }

    public static TheoryData<string, string> Boxes => new()
    {
        { "mast", "JK 95.5 m 96.5 m; angle MJK 57.5° 58.5°; angle MKJ 65.5° 66.5°" },
        { "sail", "DE 4.1 m 4.3 m; FD 2.5 m 2.7 m" },
        { "pond", "UV 30 m 32 m; angle VUW 75° 95°" },
        { "foot beyond", "DE 44 m 46 m; angle KED 112° 118°" },
        { "two triangles", "AC 2.45 m 2.55 m; CB 1.78 m 1.82 m" },
    };

    [Theory]
    [MemberData(nameof(Boxes))]
    public void EveryCornerAndEveryPlaceInside_StaysWithinTheRanges(string name, string box)
    {
        Solution solution = Plays.Solved(name);
        (string Of, string From, string To)[] sides = [.. box.Split("; ").Select(b => b.Split(' ')).Select(w => (string.Join(' ', w[..^(w[^1].Contains('°') ? 2 : 4)]), Low(w), High(w)))];
        Replay whole = Within(solution, sides);
        Assert.Empty(whole.Broken);
        Random random = new(5);
        for (int i = 0; i < (1 << sides.Length) + 8; i++)
        {
            GivenIs[] place = [.. sides.Select((s, k) => new GivenIs(solution.Given(s.Of), i >> sides.Length == 0 ? Plays.Value((i >> k & 1) == 0 ? s.From : s.To) : Between(s.From, s.To, random)))];
            Replay there = solution.Replay([.. place]);
            Assert.Empty(there.Broken);
            Assert.Equal(whole.Values.Select(v => v.Claim), there.Values.Select(v => v.Claim));
            foreach (Outcome outcome in there.Values)
                Assert.True(whole[outcome.Claim]!.In(outcome.Value.Unit).True is var range && range.Low <= outcome.Value.True.High && outcome.Value.True.Low <= range.High, outcome.Claim.Name);
        }
    }

    [Theory]
    [InlineData("mast", "angle MJK", "80°", "100°", Break.FigureFactFails)]
    [InlineData("two triangles", "CB", "1.5 m", "1.6 m", Break.FigureFactFails)]
    [InlineData("two triangles", "CB", "2.4 m", "2.6 m", Break.OtherCase)]
    [InlineData("sail", "DE", "5.9 m", "6.2 m", Break.FigureFactFails)]
    [InlineData("more than is needed", "AB", "2.9 m", "3.1 m", Break.StatementFails)]
    public void WhatFailsSomewhere_IsBroken(string name, string of, string from, string to, Break why) =>
        Assert.Contains(Within(Plays.Solved(name), [(of, from, to)]).Broken, b => b.Why == why);

    private static string Low(string[] w) => w[^1].Contains('°') ? w[^2] : $"{w[^4]} {w[^3]}";

    private static string High(string[] w) => w[^1].Contains('°') ? w[^1] : $"{w[^2]} {w[^1]}";

    private static Expr Between(string from, string to, Random random)
    {
        Fraction share = new(random.Next(1, 100), 100);
        return new Sum(new Product(new Quantity(Exact.Of(1 - share), Unit.None), Plays.Value(from)), new Product(new Quantity(Exact.Of(share), Unit.None), Plays.Value(to)));
    }

    private static Replay Within(Solution solution, (string Of, string From, string To)[] box) =>
        solution.Replay([.. box.Select(b => new GivenWithin(solution.Given(b.Of), Plays.Value(b.From), Plays.Value(b.To)))]);

    private static bool IsNear(Fraction end, Value printed) => (end - printed.True.Middle).Abs() < Fraction.Pow(10, -30);
}
