namespace Explain.Tests.Solving.Medians;

/// <summary>A new topic is a value with words: solving, verifying, every form, English and output come with it.</summary>
public sealed class MedianTopicTests
{
    private const string Shelf = """
        topic: medians
        title: A stay to the middle of a beam
        figure: [KLT is a triangle, N is the midpoint of KL]
        given: {KL: 6 m, LT: 4.5 m, TK: 3.7 m}
        find: TN
        """;

    public static TheoryData<Form, English, Output> Pages()
    {
        TheoryData<Form, English, Output> pages = [];
        foreach (Form form in Enum.GetValues<Form>())
            foreach (English english in Enum.GetValues<English>())
                foreach (Output output in Enum.GetValues<Output>())
                    pages.Add(form, english, output);
        return pages;
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void EveryPage_IsPrinted(Form form, English english, Output output)
    {
        string page = MedianTopic.Renderer(english).Render(Solved(Shelf), form, output);
        Snapshot.Verify(page, $"{form}.{english}", output == Output.Latex ? "tex" : "md");
    }

    [Fact]
    public void TheSolution_IsVerifiedAndItsCheckGoesAnotherWay()
    {
        Solution solution = Solved(Shelf);
        Assert.True(solution.Verification.Ran);
        Assert.Contains(solution.Parts[0].Passages, p => p.Use == PassageUse.Check);
        Assert.Equal("medians", solution.Topic.Name);
    }

    [Fact]
    public void TheStarter_IsSolvedExactly()
    {
        AnswerValue answer = Assert.Single(Solved(MedianTopic.Starter).Parts[0].Answers[0].Values);
        Assert.Equal("√21", answer.Value!.Exact!.ToString());
    }

    [Fact]
    public void DrawnTriangles_GiveTheMedianOfTheirCoordinates()
    {
        Random random = new(91);
        for (int i = 0; i < 40; i++)
        {
            int x = random.Next(1, 60), y = random.Next(1, 60), z = random.Next(1, 60);
            double ab = x + y, bc = y + z, ca = z + x, at = (ab * ab + ca * ca - bc * bc) / (2 * ab), up = ca * ca - at * at;
            Solution solution = Solved($"topic: medians\nfigure: [ABC is a triangle, M is the midpoint of AB]\ngiven: {{AB: {ab} cm, BC: {bc} cm, CA: {ca} cm}}\nfind: CM\n");
            double found = Assert.Single(solution.Parts[0].Answers[0].Values).Value!.Number;
            Assert.Equal(Math.Sqrt((ab / 2 - at) * (ab / 2 - at) + up), found, found * 1e-9);
        }
    }

    [Fact]
    public void AProblemWithoutATopic_IsTakenByTheNewOneOnly() =>
        Assert.Equal("medians", Solved(Shelf.Replace("topic: medians\n", "", StringComparison.Ordinal)).Topic.Name);

    [Fact]
    public void TheLibraryAlone_DoesNotKnowIt()
    {
        Refused refused = Assert.IsType<Refused>(new Solver().Solve(Problem.Read(Shelf)));
        Assert.Equal(ErrorCodes.UnknownTopic, Assert.Single(refused.Errors).Code);
    }

    [Fact]
    public void WordsThatAreMissing_AreSaidBeforeAnythingIsPrinted()
    {
        WordingException error = Assert.Throws<WordingException>(() => new Renderer().Render(Solved(Shelf), Form.WorkedSolution, Output.Markdown));
        Assert.Equal("medians.straight", error.Id);
    }

    private static Solution Solved(string text)
    {
        SolveResult result = MedianTopic.Solver.Solve(Problem.Read(text, "shelf.yaml"));
        Assert.True(result is Solved, string.Join("; ", result is Failed failed ? failed.Findings.Select(f => f.ToString()) : Ask.Codes(result)));
        return ((Solved)result).Solution;
    }
}
