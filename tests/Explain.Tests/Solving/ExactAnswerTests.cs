using System.Globalization;
using Explain.Tests.Numbers;
using Explain.Tests.Published;
using Fractions;

namespace Explain.Tests.Solving;

/// <summary>Answers in roots and fractions, on the page and in the data.</summary>
public sealed class ExactAnswerTests
{
    public static TheoryData<string> Ratios => [.. PublishedRow.All("published-exact-values").Where(r => r.Tolerance == "exact" && Degrees(r) > 0 && Degrees(r) < 90).Select(r => r.Id)];

    /// <summary>The ratio as a side of a right-angled triangle whose hypotenuse, or whose side beside the angle, is 1 m.</summary>
    [Theory]
    [MemberData(nameof(Ratios))]
    public void APublishedRatio_IsASideOfATriangle(string id)
    {
        PublishedRow row = PublishedRow.All("published-exact-values").Single(r => r.Id == id);
        string function = row.Find.Split(' ')[0];
        Solution solution = Solved("ABC is a triangle, right-angled at B", "exact", function == "cos" ? "AB" : "BC",
            ("angle BAC", row.Find.Split(' ')[1]), (function == "tan" ? "AB" : "CA", "1 m"));
        Assert.Equal(ExactReader.Read(row.Expected), Only(solution).Value!.Exact);
        Assert.Equal(Only(solution).Value!.Exact, ExactReader.Read(Printed(solution)));
    }

    /// <summary>0°, 90° and 105° are no acute angles of a right-angled triangle; the decimals are cut digits, which the numbers themselves are held to.</summary>
    [Fact]
    public void TheOtherRows_AreNoSides() => Assert.Equal(["EXA-003.1", "EXA-020.1", "EXA-021.1", "EXA-010.2", "EXA-006.3", "EXA-007.3", "EXA-011.2", "EXA-013.2", "EXA-001.3"],
        PublishedRow.All("published-exact-values").Select(r => r.Id).Except(Names(Ratios)));

    [Theory]
    [InlineData("ABC is a triangle", "exact", "AB: 4 cm, BC: 5 cm, angle ABC: 45°", "CA", "√(41 − 20√2) cm")]
    [InlineData("ABC is a triangle", "exact", "AB: 12 cm, BC: 10 cm, angle ABC: 30°", "CA", "2√(61 − 30√3) cm")]
    [InlineData("ABC is a triangle", "exact", "AB: 6 cm, angle ABC: 45°, angle BAC: 75°", "BC", "(√6 + 3√2) cm")]
    [InlineData("ABC is a triangle", "exact, 3 significant figures", "AB: 6 cm, angle ABC: 45°, angle BAC: 75°", "CA", "2√6 cm ≈ 4.90 cm")]
    [InlineData("ABC is a triangle", "exact", "AB: 2.5 cm, angle ABC: 45°, angle BCA: 90°", "CA", "1.25√2 cm")]
    [InlineData("ABC is a triangle", "exact", "AB: 5/2 cm, angle ABC: 45°, angle BCA: 90°", "CA", "5√2/4 cm")]
    [InlineData("ABC is a triangle, right-angled at C", "exact", "AC: √2 m, BC: 1 1/2 m", "AB", "√17/2 m")]
    [InlineData("ABC is a triangle, right-angled at C", "exact", "AC: 3/4 m, BC: 1 m", "AB", "5/4 m")]
    [InlineData("ABC is a triangle, right-angled at C", "exact", "AC: 0.75 m, BC: 1 m", "AB", "1.25 m")]
    [InlineData("ABC is a triangle, right-angled at C", "exact", "AC: (√5 + 1) m, angle BAC: 60°", "AB", "2(√5 + 1) m")]
    [InlineData("ABC is a triangle, right-angled at B", "exact", "AB: 5 cm, BC: 5√3 cm", "angle BAC", "60°")]
    [InlineData("ABC is a triangle", "exact", "AB: 6 cm, BC: 5 cm, angle ABC: 62°", "CA", "5.73 cm")]
    [InlineData("ABC is an equilateral triangle", "exact", "AB: 7 cm", "distance from C to AB", "7√3/2 cm")]
    public void TheAnswer_IsPrintedAsItsExactForm(string figure, string round, string given, string find, string answer)
    {
        Solution solution = Solved(figure, round, find, [.. given.Split(", ").Select(g => (g.Split(": ")[0], g.Split(": ")[1]))]);
        Assert.Equal(answer, new Renderer(English.UnitedKingdom).Say(Only(solution)).Replace((char)0xA0, ' ').Replace((char)0x202F, ' '));
        Assert.Equal(find == "CA" && given.Contains("62°", StringComparison.Ordinal) ? ["no-exact-form"] : [], solution.Warnings.Select(w => w.Code));
        foreach (English english in Enum.GetValues<English>())
            foreach (Output output in new[] { Output.Markdown, Output.Latex })
                Assert.NotEmpty(new Renderer(english).Render(solution, Form.WorkedSolution, output));
    }

    private static IEnumerable<string> Names(IEnumerable<object[]> rows) => rows.Select(r => (string)r[0]);

    private static Fraction Degrees(PublishedRow row) => Fraction.FromString(row.Find.Split(' ')[1].TrimEnd('°'), CultureInfo.InvariantCulture);

    private static AnswerValue Only(Solution solution) => Assert.Single(solution.Parts[0].Answers[0].Values);

    private static string Printed(Solution solution) => Only(solution).Value!.Exact!.ToString();

    private static Solution Solved(string figure, string round, string find, params (string Of, string Is)[] given) => Assert.IsType<Solved>(new Solver().Solve(Problem.Read(
        $"topic: solve a triangle\nfigure: {figure}\ngiven:\n{string.Concat(given.Select(g => $"  {g.Of}: {g.Is}\n"))}find: {find}\nround: {round}\n", "exact.yaml"))).Solution;
}
