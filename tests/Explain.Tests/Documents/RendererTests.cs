using System.Globalization;
using Explain.Tests.Documents.Samples;
using Explain.Tests.Solving;

namespace Explain.Tests.Documents;

public sealed class RendererTests
{
    private static readonly Renderer UnitedKingdom = SampleWords.Renderer(English.UnitedKingdom), UnitedStates = SampleWords.Renderer(English.UnitedStates);

    [Fact]
    public void AnAngleThatTheFigureGives_StandsByItsNameInTheAnswer()
    {
        SolveResult result = new Solver().Solve(Problem.Read("topic: solve a triangle\nfigure: \"ABC is a triangle, right-angled at B\"\ngiven: {AB: 3 m, BC: 4 m}\nfind: angles of ABC\n"));
        string page = new Renderer().Render(Assert.IsType<Solved>(result).Solution, Form.Answer, Output.Markdown);
        Assert.Contains("**Angle BAC ≈ 53.1°, angle ABC = 90° and angle ACB ≈ 36.9°**", page.Replace('\u00A0', ' '), StringComparison.Ordinal);
    }

    [Fact]
    public void Say_ACalculationInOneLine()
    {
        Calculation pt = Mast.Solution.Steps.OfType<Calculation>().First(c => c.Target == Claims.Quantity("PT"));
        Assert.Equal("PT = PQ × sin PQT ÷ sin PTQ = 120 × sin 71° ÷ sin 47° = 120 × 0.94551… ÷ 0.73135… = 155.140… m", UnitedKingdom.Say(pt, Mast.Solution));
        Assert.Equal("PT = PQ · sin ∠PQT ÷ sin ∠PTQ = 120 · sin 71° ÷ sin 47° = 120 · 0.94551… ÷ 0.73135… = 155.140… m", UnitedStates.Say(pt, Mast.Solution));
    }

    [Fact]
    public void Say_AReason()
    {
        Calculation qt = Mast.Solution.Steps.OfType<Calculation>().First(c => c.Target == Claims.Quantity("QT"));
        Assert.Equal("law of sines: each side divided by the sine of the angle opposite it gives the same value. QT is opposite ∠QPT; PQ is opposite ∠PTQ", UnitedStates.Say(qt.Why, Mast.Solution));
    }

    [Fact]
    public void Say_AnswersAndBounds()
    {
        Answer[] answers = [.. Mast.Solution.Parts.SelectMany(p => p.Answers)];
        Assert.Equal(["155 m", "145 m", "137 m", "137 m"], answers.Select(UnitedKingdom.Say));
        Assert.Equal("133.2 m to 141.0 m", UnitedKingdom.Say(answers[3].Only!.Bounds!));
        Assert.Equal("2.90 m or 1.04 m", UnitedKingdom.Say(TwoTriangles.Solution.Parts[0].Answers[0]));
    }

    [Fact]
    public void AnExactAnswer_IsEqualAndNotRounded()
    {
        Solution solution = ((Solved)Ask.Triangle([("AC", "10 cm"), ("CB", "5 cm"), ("angle BAC", "30°")], "AB", "angle ABC")).Solution;
        Assert.Contains("**AB ≈ 8.66 cm and angle ABC = 90°** (3 significant figures).", UnitedKingdom.Render(solution, Form.Answer, Output.Markdown));
    }

    [Fact]
    public void OtherUnits_AreConvertedWhereTheyAreFirstUsed()
    {
        Solution solution = ((Solved)Ask.Triangle([("AB", "5 ft 3 in"), ("AC", "4 ft"), ("angle BAC", "62° 30'")], "BC", "angle ABC")).Solution;
        string page = UnitedKingdom.Render(solution, Form.WorkedSolution, Output.Markdown);
        Assert.Single(page.Split('\n'), @"$$AC=4\text{ ft}=48\text{ in}$$");
        Assert.Single(page.Split('\n'), @"$$AB=5\text{ ft}\text{ }3\text{ in}=63\text{ in}$$");
        Assert.Single(page.Split('\n'), @"$$\text{angle }BAC=62^\circ\text{ }30'=62.5^\circ$$");
        Assert.Contains(@"\sqrt{48^2+63^2-2\times 48\times 63\times\cos 62.5^\circ}", page);
        Assert.Contains("BC ≈ 4 ft 11.0 in", page);
    }

    [Fact]
    public void Say_AnError()
    {
        ProblemError error = new("missing-unit", [5], 3, Claims.Phrase("error.unreadable-quantity", new TextArg("typed", "<b>PT</b>")), Claims.Phrase("remedy.did-you-mean", new TextArg("instead", "PT")));
        string said = UnitedKingdom.Say(error);
        Assert.Contains("<b>PT</b>", said);
        Assert.EndsWith("PT?", said);
        Assert.True(char.IsUpper(said[0]) || said[0] == '<');
    }

    [Fact]
    public void OneRenderer_ServesManyThreads_UnderAnyCulture()
    {
        string[] expected = [.. Pages()];
        string[] cultures = ["tr-TR", "de-DE", "ar-SA"];
        Parallel.For(0, 200, i =>
        {
            CultureInfo.CurrentCulture = Culture(cultures[i % 3]);
            Assert.Equal(expected, Pages());
        });

        static CultureInfo Culture(string name) => new(CultureInfo.InvariantCulture.Name) { NumberFormat = { NumberDecimalSeparator = name == "de-DE" ? "," : "٫", NegativeSign = "neg" } };
    }

    private static IEnumerable<string> Pages() =>
    [
        UnitedKingdom.Render(Mast.Solution, Form.WorkedSolution, Output.Markdown), UnitedStates.Render(TwoTriangles.Solution, Form.WorkedSolution, Output.Latex),
        UnitedKingdom.Render(TwoTriangles.Solution, Form.Answer, Output.Latex),
    ];
}
