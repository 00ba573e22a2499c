using System.Runtime.CompilerServices;

namespace Explain.Tests.Gallery;

/// <summary>
/// Every demo problem in both Englishes and both outputs, as docs/gallery shows it. A page that changed is written beside
/// the old one as NAME.received.EXT; with EXPLAIN_ACCEPT=1 it takes the old one's place.
/// </summary>
public sealed class GalleryTests
{
    public static TheoryData<string, English, Output> Pages()
    {
        TheoryData<string, English, Output> pages = [];
        foreach (string problem in Directory.EnumerateFiles(Folder("problems"), "*.yaml").Order(StringComparer.Ordinal))
            foreach (English english in Enum.GetValues<English>())
                foreach (Output output in new[] { Output.Markdown, Output.Latex })
                    pages.Add(Path.GetFileName(problem), english, output);
        return pages;
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void ThePage_IsTheOneInTheGallery(string problem, English english, Output output)
    {
        string name = Path.GetFileNameWithoutExtension(problem) + (english == English.UnitedStates ? ".us" : ""), ending = output == Output.Latex ? ".tex" : ".md";
        string page = new Renderer(english).Render(Solved(problem), Form.WorkedSolution, output), kept = Path.Combine(Folder("gallery"), name + ending);
        if (Environment.GetEnvironmentVariable("EXPLAIN_ACCEPT") == "1") File.WriteAllText(kept, page);
        if (File.Exists(kept) && File.ReadAllText(kept) == page) return;
        File.WriteAllText(Path.Combine(Folder("gallery"), name + ".received" + ending), page);
        Assert.Fail($"{name}{ending} differs from the gallery");
    }

    [Fact]
    public void BothEnglishes_PrintTheSameNumbers()
    {
        foreach (string problem in Directory.EnumerateFiles(Folder("problems"), "*.yaml").Select(Path.GetFileName).OfType<string>())
        {
            Solution solution = Solved(problem);
            string[] pages = [.. Enum.GetValues<English>().Select(e => new Renderer(e).Render(solution, Form.WorkedSolution, Output.Markdown))];
            Assert.Equal(Numbers(pages[0]), Numbers(pages[1]));
        }
    }

    [Fact]
    public void TheSameProblem_HasTheSameSolutionTwice()
    {
        foreach (string problem in Directory.EnumerateFiles(Folder("problems"), "*.yaml").Select(Path.GetFileName).OfType<string>())
            Assert.Equal(Solved(problem), Solved(problem));
    }

    private static Solution Solved(string problem) => Assert.IsType<Solved>(new Solver().Solve(Problem.Load(Path.Combine(Folder("problems"), problem)))).Solution;

    private static string[] Numbers(string page) => [.. System.Text.RegularExpressions.Regex.Matches(page, @"\d+\.\d+").Select(m => m.Value)];

    private static string Folder(string name, [CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", "docs", name));
}
