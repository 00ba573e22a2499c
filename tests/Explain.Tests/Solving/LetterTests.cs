namespace Explain.Tests.Solving;

/// <summary>Measurements in a letter: the letter comes from a relation of the triangle, and all else from the letter.</summary>
public sealed class LetterTests
{
    [Theory]
    [InlineData("ABC is a triangle", "angle ABC: (2x + 10)°, angle BCA: 3x°, angle CAB: x°", "85/3", "angle-sum-of-a-triangle")]
    [InlineData("ABC is a triangle", "angle ABC: (2x + 10)°, angle BCA: 70°, angle CAB: x°", "100/3", "angle-sum-of-a-triangle")]
    [InlineData("ABC is a triangle, right-angled at B", "angle BAC: x°, angle BCA: (2x + 15)°", "25", "acute-angles-of-a-right-angled-triangle")]
    [InlineData("ABC is a triangle, isosceles with AB = AC", "angle ABC: 3x°, angle ACB: (x + 40)°", "20", "isosceles-triangle")]
    [InlineData("ABC is a triangle, isosceles with AB = AC", "angle ABC: 3x°, angle BAC: (x + 40)°", "20", "isosceles-angle-sum")]
    [InlineData("ABC is a triangle, isosceles with AB = AC", "AB: (2x + 3) cm, AC: (5x − 6) cm", "3", "equal-sides")]
    [InlineData("[ABC is a triangle, angle ABC = angle ACB]", "angle ABC: (y + 5)°, angle BAC: 2y°", "42.5", "equal-angles-sum")]
    [InlineData("ABC is an equilateral triangle", "angle ABC: (4x − 20)°", "20", "equilateral-triangle-angles")]
    public void TheLetter_ComesFromTheRuleOfTheFigure(string figure, string given, string value, string rule)
    {
        string letter = given.Contains('y', StringComparison.Ordinal) ? "y" : "x";
        Solution solution = Assert.IsType<Solved>(Ask.Text("solve a triangle", figure, Pairs(given), letter)).Solution;
        Assert.Equal(Numbers.ExactReader.Read(value), Assert.Single(solution.Parts[0].Answers[0].Values).Value!.Exact);
        Algebra algebra = Assert.IsType<Algebra>(Assert.Single(solution.Parts[0].Passages.Single(p => p.Use == PassageUse.Working).Steps));
        Assert.Equal(rule, algebra.Why.Rule.Name);
        foreach (English english in Enum.GetValues<English>())
            foreach (Output output in Enum.GetValues<Output>())
                Assert.NotEmpty(new Renderer(english).Render(solution, Form.WorkedSolution, output));
    }

    [Fact]
    public void WhatIsAskedBesides_FollowsFromTheLetter()
    {
        SolveResult result = Ask.Triangle([("angle ABC", "(2x + 10)°"), ("angle BCA", "3x°"), ("angle CAB", "(x + 20)°"), ("AB", "7 cm")], "x", "angle ABC", "BC", "CA");
        Assert.Equal(25, Assert.Single(Ask.Values(result, "x")));
        Assert.Equal(60, Assert.Single(Ask.Values(result, "angle ABC")));
        Assert.Equal(7 * Math.Sin(Math.PI / 4) / Math.Sin(75 * Math.PI / 180), Assert.Single(Ask.Values(result, "BC")), 1e-9);
        Assert.Equal(7 * Math.Sin(Math.PI / 3) / Math.Sin(75 * Math.PI / 180), Assert.Single(Ask.Values(result, "CA")), 1e-9);
    }

    [Theory]
    [InlineData("impossible-angle", "ABC is a triangle", "angle ABC: (2x + 140)°, angle BCA: 3x°, angle CAB: (x − 20)°")]
    [InlineData("not-positive", "ABC is a triangle, isosceles with AB = AC", "AB: (2x + 3) cm, AC: (x + 1) cm, angle BAC: 40°")]
    [InlineData("no-triangle", "ABC is a triangle, isosceles with AB = AC", "AB: (2x + 3) cm, AC: 5 cm, BC: 20x cm")]
    [InlineData("contradiction", "ABC is a triangle, right-angled at B", "angle BAC: x°, angle BCA: 2x°, BC: 3 cm, AB: x cm")]
    [InlineData("not-supported", "ABC is a triangle", "angle ABC: (x + y)°, angle BCA: 3x°, angle CAB: x°")]
    [InlineData("not-supported", "ABC is a triangle", "AB: x cm, BC: (x + 1) cm, CA: 5 cm")]
    public void WhatTheLetterCannotBe_IsRefused(string code, string figure, string given) =>
        Assert.Equal([code], Ask.Codes(Ask.Text("solve a triangle", figure, Pairs(given), "angle ABC")));

    private static IEnumerable<(string, string)> Pairs(string given) => given.Split(", ").Select(g => (g.Split(": ")[0], g.Split(": ")[1]));
}
