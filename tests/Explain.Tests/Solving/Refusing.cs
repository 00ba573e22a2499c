namespace Explain.Tests.Solving;

/// <summary>What cannot be solved is refused with a code and the lines at fault.</summary>
public sealed class Refusing
{
    [Theory]
    [InlineData("no-triangle", "AB: 9.5 cm, BC: 3 cm, CA: 6 cm")]
    [InlineData("flat-triangle", "AB: 9.5 cm, BC: 3.5 cm, CA: 6 cm")]
    [InlineData("does-not-reach", "angle BAC: 38°, AC: 2.5 m, CB: 1.5 m")]
    [InlineData("rays-do-not-meet", "AB: 5 m, angle BAC: 112°, angle ABC: 71°")]
    [InlineData("not-enough-data", "angle BAC: 50°, angle ABC: 71°")]
    [InlineData("not-enough-data", "AC: 5 m, angle ABC: 71°")]
    [InlineData("contradiction", "AB: 120 m, angle BAC: 62°, angle ABC: 71°, angle ACB: 50°")]
    [InlineData("contradiction", "AB: 3 m, BC: 4 m, CA: 5 m, angle ABC: 91°")]
    public void AProblem_IsRefusedWithItsCode(string code, string given)
    {
        (string, string)[] pairs = [.. given.Split(", ").Select(g => (g.Split(": ")[0], g.Split(": ")[1]))];
        string find = pairs.Any(p => p.Item1 is "AB") ? "CA" : "AB";
        SolveResult result = Ask.Triangle(pairs, find == "CA" && pairs.Any(p => p.Item1 is "CA") ? "angle BCA" : find);
        Assert.Equal(code, Assert.IsType<Refused>(result).Errors[0].Code);
        Assert.All(((Refused)result).Errors, e => Assert.NotEmpty(new Renderer(English.UnitedKingdom).Say(e)));
    }

    [Fact]
    public void DataThatAgree_AreNoContradiction() =>
        Assert.IsType<Solved>(Ask.Triangle([("AB", "3 m"), ("BC", "4 m"), ("CA", "5 m"), ("angle ABC", "90°")], "angle BAC"));

    [Fact]
    public void ExactValues_ArePrintedWithAnEqualsSign()
    {
        Solution solution = Assert.IsType<Solved>(Ask.Triangle([("AB", "10 cm"), ("angle BAC", "65°"), ("angle ABC", "50°")], "BC")).Solution;
        Assert.EndsWith("**BC = 10 cm**.\n", new Renderer(English.UnitedKingdom).Render(solution, Form.Answer, Output.Markdown).Replace((char)0xA0, (char)0x20), StringComparison.Ordinal);
    }
}
