namespace Explain.Tests.Solving;

/// <summary>Answers in the units that a problem asks for: feet and inches, parts of an inch, minutes and seconds.</summary>
public sealed class UnitAnswerTests
{
    private const string FeetAndInches = "AB: 5 ft 3 in, BC: 40 in, angle ABC: 60° 30'";

    [Theory]
    [InlineData("lengths: nearest inch", FeetAndInches, "CA", "4 ft 8 in")]
    [InlineData("lengths: nearest 1/8 in", FeetAndInches, "CA", "4 ft 7 ½ in")]
    [InlineData("lengths: nearest 1/16 in", FeetAndInches, "CA", "4 ft 7 9/16 in")]
    [InlineData("lengths: 3 significant figures", FeetAndInches, "CA", "4 ft 7.6 in")]
    [InlineData("lengths: 2 decimal places", FeetAndInches, "CA", "4 ft 7.56 in")]
    [InlineData("lengths: nearest foot", FeetAndInches, "CA", "5 ft")]
    [InlineData("lengths: nearest cm", FeetAndInches, "CA", "141 cm")]
    [InlineData("lengths: nearest 0.1 yd", FeetAndInches, "CA", "1.5 yd")]
    [InlineData("lengths: nearest inch", "AB: 3 ft 0 in, BC: 4 ft, angle ABC: 90°", "CA", "5 ft 0 in")]
    [InlineData("lengths: nearest inch", "AB: 3 ft 0 in, BC: 2 in, angle ABC: 5°", "angle ABC", "5°")]
    [InlineData("lengths: nearest inch", "AB: 8 ft 0 in, BC: 8 ft 1 in, angle ABC: 1°", "CA", "2 in")]
    [InlineData("lengths: nearest 1/4 in", "AB: 9 in, BC: 40 in, angle ABC: 90°", "CA", "41 in")]
    [InlineData("lengths: nearest 1/4 in", "AB: 10 in, BC: 40 in, angle ABC: 90°", "CA", "41 ¼ in")]
    [InlineData("lengths: nearest mm", "AB: 1.2 m, BC: 50 cm, angle ABC: 90°", "CA", "1300 mm")]
    [InlineData("angles: nearest minute", "BC: 18.4 cm, CA: 12.2 cm, angle BCA: 42°", "angle BAC", "96° 50′")]
    [InlineData("angles: nearest minute", "BC: 18.4 cm, CA: 12.2 cm, angle BCA: 42°", "angle ABC", "41° 10′")]
    [InlineData("angles: nearest second", "BC: 18.4 cm, CA: 12.2 cm, angle BCA: 42°", "angle BAC", "96° 49′ 35″")]
    [InlineData("angles: nearest minute", "BC: 18.4 cm, angle CAB: 62° 30', angle BCA: 42° 15'", "angle ABC", "75° 15′")]
    [InlineData("angles: nearest second", "BC: 18.4 cm, angle CAB: 62° 30' 20\", angle BCA: 42° 15'", "angle ABC", "75° 14′ 40″")]
    public void TheAnswer_StandsInItsUnits(string round, string given, string find, string answer)
    {
        Solution solution = Solved(round, given, find);
        AnswerValue value = Assert.Single(solution.Parts[0].Answers[0].Values);
        Assert.Equal(answer, Plain(new Renderer(English.UnitedKingdom).Say(value)));
        foreach (English english in Enum.GetValues<English>())
            foreach (Output output in Enum.GetValues<Output>())
                Assert.NotEmpty(new Renderer(english).Render(solution, Form.WorkedSolution, output));
    }

    [Fact]
    public void TheRounding_IsSaidInTheWordsOfItsUnit()
    {
        Assert.Contains("the nearest inch", Page("lengths: nearest inch", English.UnitedStates), StringComparison.Ordinal);
        Assert.Contains("the nearest 1/8 inch", Page("lengths: nearest 1/8 in", English.UnitedStates), StringComparison.Ordinal);
        Assert.Contains("the nearest centimetre", Page("lengths: nearest cm", English.UnitedKingdom), StringComparison.Ordinal);
        Assert.Contains("the nearest centimeter", Page("lengths: nearest cm", English.UnitedStates), StringComparison.Ordinal);
        Assert.Contains(@"$$AB=5\text{ ft}\text{ }3\text{ in}=63\text{ in}$$", Page("lengths: nearest inch", English.UnitedKingdom), StringComparison.Ordinal);
    }

    private static string Page(string round, English english) => Plain(new Renderer(english).Render(Solved(round, FeetAndInches, "CA"), Form.WorkedSolution, Output.Markdown));

    private static string Plain(string text) => text.Replace((char)0xA0, ' ').Replace("\u202F", "", StringComparison.Ordinal);

    private static Solution Solved(string round, string given, string find) => Assert.IsType<Solved>(new Solver().Solve(Problem.Read(
        $"topic: solve a triangle\nfigure: ABC is a triangle\ngiven:\n{string.Concat(given.Split(", ").Select(g => $"  {g}\n"))}find: {find}\nround: {{{round}}}\n", "units.yaml"))).Solution;
}
