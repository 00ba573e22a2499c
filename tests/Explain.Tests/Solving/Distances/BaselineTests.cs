using Explain.Tests.Placing;

namespace Explain.Tests.Solving.Distances;

/// <summary>Distances from a baseline: what the page says where an angle is right, obtuse or near a right angle, and what is refused.</summary>
public sealed class BaselineTests
{
    private const string Topic = "inaccessible distance", Side = "the same side";

    [Fact]
    public void OverARightAngle_TheDistanceIsTheSide_ButVariesAsTheDistance()
    {
        Solution solution = Solved("PQT is a triangle", [("PQ", "85 m ± 0.5 m"), ("angle QPT", "90° ± 1°"), ("angle PQT", "34° ± 1°")], "distance from T to PQ");
        Assert.Contains(solution.Steps, s => s.Why.Rule.Name == "perpendicular-side");
        AnswerValue answer = solution.Parts[0].Answers[0].Values[0];
        Assert.Equal(85 * Math.Tan(34 * Math.PI / 180), answer.Value!.Number, 1e-9);
        Assert.Equal(85.5 / (1 / Math.Tan(91 * Math.PI / 180) + 1 / Math.Tan(35 * Math.PI / 180)), answer.Bounds!.Upper.Number, 1e-9);
    }

    [Theory]
    [InlineData("62°", "foot-between")]
    [InlineData("112°", "foot-beyond")]
    public void TheFoot_IsPlacedWithAReason(string angle, string rule) =>
        Assert.Contains(Solved("PQT is a triangle", [("PQ", "85 m"), ("angle QPT", angle), ("angle PQT", "34°")], "distance from T to PQ").Steps, s => s.Why.Rule.Name == rule);

    [Theory]
    [InlineData("62° ± 0.5°", "71° ± 0.5°", true)] // both acute: tangents
    [InlineData("112° ± 1°", "34° ± 1°", true)] // one obtuse: the tangent of its supplement
    [InlineData("89.5° ± 1°", "34° ± 1°", false)] // acute or obtuse: only the rate of change speaks
    public void Directions_AreFollowedThroughTheFormulaWhereTheyCanBe(string first, string second, bool followed)
    {
        Solution solution = Solved("PQT is a triangle", [("PQ", "85 m ± 0.5 m"), ("angle QPT", first), ("angle PQT", second)], "bounds of distance from T to PQ");
        Assert.Equal(!followed, solution.Steps.Any(s => s.Why.Rule.Name == "one-direction"));
    }

    [Theory]
    [InlineData("62°", "71°", "remark.smallest-angle")]
    [InlineData("31°", "40°", "remark.largest-angle")]
    [InlineData("40°", "70°", null)] // the third angle, 70°, is neither
    public void TheThirdAngle_TellsOfTheSidesOnlyWhereItDoes(string first, string second, string? remark)
    {
        Solution solution = Solved("PQT is a triangle", [("PQ", "120 m"), ("angle QPT", first), ("angle PQT", second)], "PT", "QT");
        string[] said = [.. solution.Steps.SelectMany(s => s.Remarks).Select(r => r.Says.Id.Name)];
        if (remark is null) Assert.DoesNotContain(said, s => s.EndsWith("-angle", StringComparison.Ordinal));
        else Assert.Contains(remark, said);
    }

    [Theory]
    [InlineData("120 m ± 0.1 m", "62° ± 1°", "34° ± 0.1°", true)]
    [InlineData("120 m ± 0.5 m", "62° ± 0.5°", "71° ± 0.5°", false)]
    public void MostOfTheUncertainty_IsSaidOnlyWhereItIsMost(string baseline, string first, string second, bool said)
    {
        Solution solution = Solved("PQT is a triangle", [("PQ", baseline), ("angle QPT", first), ("angle PQT", second)], "bounds of PT");
        Assert.Equal(said, solution.Steps.SelectMany(s => s.Remarks).Any(r => r.OnlyIf is MostOf));
    }

    [Fact]
    public void OneLineOfAccuracy_ServesEveryMeasurement()
    {
        SolveResult result = new Solver().Solve(Problem.Read($"topic: {Topic}\nfigure: PQT is a triangle\ngiven: {{PQ: 120 m, angle QPT: 62°, angle PQT: 71°}}\naccuracy: 0.5 m and 0.5°\nfind: distance from T to PQ\n", "a.yaml"));
        AnswerValue answer = Assert.IsType<Solved>(result).Solution.Parts[0].Answers[0].Values[0];
        Assert.Equal(133.210820673, answer.Bounds!.Lower.Number, 1e-8);
        Assert.Equal(140.908912997, answer.Bounds.Upper.Number, 1e-8);
    }

    [Theory]
    [InlineData("no-bounds", "PQT is a triangle", "PQ: 120 m ± 1 m; angle QPT: 92° ± 5°; angle PQT: 84° ± 5°", "bounds of PT")]
    [InlineData("not-enough-data", "PQT is a triangle", "PQ: 120 m; angle QPT: 62°; angle PQT: 71°", "bounds of PT")]
    [InlineData("rays-do-not-meet", "PQT is a triangle", "PQ: 120 m; angle QPT: 112°; angle PQT: 71°", "PT")]
    [InlineData("arrangement-not-fixed", "[PQT is a triangle, PQS is a triangle]", "PQ: 120 m; angle QPT: 62°; angle PQT: 71°; angle QPS: 40°; angle PQS: 80°", "TS")]
    [InlineData("not-enough-data", "[PQT is a triangle, PQS is a triangle]", "PQ: 120 m; angle QPT: 62°; angle PQT: 71°; angle QPS: 40°", "TS")]
    public void WhatCannotBeAnswered_IsRefusedWithItsCode(string code, string figure, string given, string find)
    {
        SolveResult result = Ask.Text(Topic, figure, [.. given.Split("; ").Select(g => (g.Split(": ")[0], g.Split(": ")[1]))], find);
        Assert.Equal(code, Assert.IsType<Refused>(result).Errors[0].Code);
        Assert.All(((Refused)result).Errors, e => Assert.NotEmpty(new Renderer(English.UnitedKingdom).Say(e)));
    }

    [Fact]
    public void TwoFarPoints_AreApartAsTheirCoordinatesSay()
    {
        Random random = new(3);
        for (int i = 0; i < 8; i++)
        {
            int[] a = [.. Enumerable.Range(0, 4).Select(_ => random.Next(20, 80))];
            if (Math.Abs(a[0] - a[2]) < 3 || Math.Abs(a[1] - a[3]) < 3) continue;
            string side = i % 2 == 0 ? Side : "opposite sides";
            (string, string)[] given = [("PQ", "200 m"), ("angle QPT", $"{a[0]}°"), ("angle PQT", $"{a[1]}°"), ("angle QPS", $"{a[2]}°"), ("angle PQS", $"{a[3]}°")];
            Solution solution = Solved($"[PQT is a triangle, PQS is a triangle, T and S are on {side} of PQ]", given, "TS");
            Layout drawn = new FigureModel().Layouts(Drawn.Problem($"PQT is a triangle; PQS is a triangle; T and S are on {side} of PQ", given), 192)!.Value[0];
            Assert.Equal(drawn.Measure(Drawn.Of("TS"))!.Value.Nearest(), solution.Parts[0].Answers[0].Values[0].Value!.Number, 1e-6);
        }
    }

    [Fact]
    public void ARoundOfBearings_ComesBackToItsCoordinates()
    {
        Random random = new(11);
        for (int i = 0; i < 12; i++)
        {
            int first = random.Next(360), second = random.Next(360), ab = random.Next(5, 60), bc = random.Next(5, 60);
            int turn = Math.Abs(first - second) % 180;
            if (turn is < 5 or > 175) continue;
            Solution solution = Solved("ABC is a triangle", [("AB", $"{ab} km"), ("bearing of B from A", $"{first:000}°"), ("BC", $"{bc} km"), ("bearing of C from B", $"{second:000}°")], "AC", "bearing of A from C");
            double x = ab * Sin(first) + bc * Sin(second), y = ab * Sin(90 - first) + bc * Sin(90 - second);
            AnswerValue[] values = [.. solution.Parts[0].Answers.Select(a => a.Values[0])];
            Assert.Equal(Math.Sqrt(x * x + y * y), values[0].Value!.Number, 1e-6);
            Assert.Equal(0, Math.IEEERemainder(Math.Atan2(-x, -y) * 180 / Math.PI - values[1].Value!.Number, 360), 1e-6);
        }
    }

    [Fact]
    public void Bearings_HaveThreeFigures()
    {
        Solution solution = Solved("ABC is a triangle", [("AB", "18 km"), ("bearing of B from A", "015°"), ("BC", "12 km"), ("bearing of C from B", "035°")], "bearing of C from A");
        string page = new Renderer(English.UnitedKingdom).Render(solution, Form.WorkedSolution, Output.Markdown);
        Assert.Contains("**023.0°**", page, StringComparison.Ordinal);
        Assert.Contains("=015^\\circ+180^\\circ=195^\\circ$$", page, StringComparison.Ordinal);
    }

    private static Solution Solved(string figure, (string, string)[] given, params string[] find)
    {
        SolveResult result = Ask.Text(Topic, figure, given, find);
        Assert.True(result is Solved, string.Join(" ", given) + string.Join(" ", Ask.Codes(result)) + (result is Failed failed ? string.Join(" ", failed.Findings) : ""));
        return ((Solved)result).Solution;
    }

    private static double Sin(double degrees) => Math.Sin(degrees * Math.PI / 180);
}
