using System.Text.RegularExpressions;
using Explain.Tests.Documents.Samples;
using Explain.Tests.Solving;
using Markdig;
using Markdig.Extensions.Mathematics;
using Markdig.Extensions.Tables;
using Markdig.Syntax;

namespace Explain.Tests.Documents;

/// <summary>What must hold of every page, whatever the numbers: drawn problems of every kind, in both Englishes and outputs.</summary>
public sealed class PageTests
{
    private static readonly int Draws = Effort.Of(20, 100, 200);
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().UseMathematics().UsePipeTables().Build();
    private static readonly Lazy<Solution[]> Drawn = new(() => [Mast.Solution, TwoTriangles.Solution, .. Draw()]);

    [Fact]
    public void EveryPage_HoldsTheSameNumbersInEveryEnglishAndOutput()
    {
        foreach (Solution solution in Drawn.Value)
        {
            string[] first = Numbers(Markdown(solution, English.UnitedKingdom));
            Assert.Equal(first, Numbers(Markdown(solution, English.UnitedStates)));
            Assert.Equal(first, Numbers(Latex(solution, English.UnitedKingdom)));
            Assert.Equal(first, Numbers(Latex(solution, English.UnitedStates)));
        }
    }

    [Fact]
    public void AboutEqual_StandsInAnswersAndCutNumbersOutsideThem() => All(English.UnitedKingdom, page =>
    {
        foreach (string line in page.Split('\n'))
        {
            bool isAnswer = line.StartsWith('>');
            Assert.Equal(isAnswer && line.Contains('≈', StringComparison.Ordinal), line.Contains('≈', StringComparison.Ordinal));
            Assert.False(line.Contains(@"\approx", StringComparison.Ordinal) && !isAnswer, line);
            if (isAnswer) Assert.DoesNotContain("…", line);
        }
    });

    [Fact]
    public void EveryRow_HasAReason_AndStepsCountUp() => All(English.UnitedKingdom, page =>
    {
        List<int> numbers = [];
        foreach (string line in page.Split('\n'))
        {
            if (Regex.Match(line, @"^\*\*Steps? ([\d, and]+)\.") is { Success: true } steps) numbers.AddRange(Regex.Matches(steps.Groups[1].Value, @"\d+").Select(m => int.Parse(m.Value)));
            if (Regex.Match(line, @"^\| (\d+) \| (.+) \| (.+) \|$") is { Success: true } row)
            {
                numbers.Add(int.Parse(row.Groups[1].Value));
                Assert.NotEmpty(row.Groups[3].Value.Trim());
            }
        }

        Assert.Equal(Enumerable.Range(1, numbers.Count), numbers);
    });

    [Fact]
    public void Markdown_IsReadAsWhatItIs() => All(English.UnitedStates, page =>
    {
        MarkdownDocument parsed = Markdig.Markdown.Parse(page, Pipeline);
        Assert.Equal(Regex.Matches(page, @"\$\$.+?\$\$").Count, parsed.Descendants<MathInline>().Count(m => m.DelimiterCount == 2) + parsed.Descendants<MathBlock>().Count());
        Assert.Equal(page.Split('\n').Count(l => l.StartsWith("|---", StringComparison.Ordinal)), parsed.Descendants<Table>().Count());
        Assert.All(parsed.Descendants<Table>(), t => Assert.Single(t.OfType<TableRow>().Select(r => r.Count).Distinct()));
    });

    [Fact]
    public void Latex_IsBalanced_AndItsLabelsAreItsOwn()
    {
        foreach (Solution solution in Drawn.Value)
        {
            string page = Latex(solution, English.UnitedKingdom), bare = page.Replace(@"\\", "", StringComparison.Ordinal).Replace(@"\{", "", StringComparison.Ordinal).Replace(@"\}", "", StringComparison.Ordinal);
            Assert.Equal(bare.Count(c => c == '{'), bare.Count(c => c == '}'));
            Assert.Equal(0, bare.Replace(@"\$", "", StringComparison.Ordinal).Count(c => c == '$') % 2);
            Stack<string> open = [];
            foreach (Match match in Regex.Matches(page, @"\\(begin|end)\{([a-z*]+)\}"))
            {
                if (match.Groups[1].Value == "begin") open.Push(match.Groups[2].Value);
                else Assert.Equal(open.Pop(), match.Groups[2].Value);
            }

            Assert.Empty(open);
            string[] labels = [.. Regex.Matches(page, @"\\label\{(.+?)\}").Select(m => m.Groups[1].Value)];
            Assert.Equal(labels.Distinct(), labels);
            Assert.All(labels, l => Assert.StartsWith("explain:", l));
            Assert.All(page, c => Assert.True(c < 0x7F, $"{c} in LaTeX"));
        }
    }

    [Fact]
    public void Detail_ChangesNoAnswerAndNoReason()
    {
        foreach (Solution solution in Drawn.Value)
        {
            string[] pages = [.. Enum.GetValues<Detail>().Select(d => SampleWords.Renderer(English.UnitedKingdom, d).Render(solution, Form.WorkedSolution, Output.Markdown))];
            Assert.Single(pages.Select(p => string.Join("\n", p.Split('\n').Where(l => l.StartsWith('>')))).Distinct());
            Assert.Single(pages.Select(p => string.Join("\n", p.Split('\n').Where(l => l.StartsWith("**Step", StringComparison.Ordinal)))).Distinct());
            Assert.True(pages[0].Length < pages[2].Length);
        }
    }

    [Fact]
    public void Answers_AreThoseOfTheWorkedSolution()
    {
        foreach (Solution solution in Drawn.Value)
        {
            Renderer renderer = SampleWords.Renderer(English.UnitedKingdom);
            string[] alone = [.. renderer.Render(solution, Form.Answer, Output.Markdown).Split('\n').Where(l => l.StartsWith('>'))];
            Assert.NotEmpty(alone);
            Assert.Equal(renderer.Render(solution, Form.WorkedSolution, Output.Markdown).Split('\n').Where(l => l.StartsWith('>')), alone);
        }
    }

    [Fact]
    public void Questions_GiveNoAnswerAway()
    {
        foreach (Solution solution in Drawn.Value)
        {
            string question = SampleWords.Renderer(English.UnitedKingdom).Render(solution.Of, Output.Markdown);
            foreach (AnswerValue value in solution.Parts.SelectMany(p => p.Answers).SelectMany(a => a.Values))
                if (value.Value is not null && !solution.Of.Given.Any(g => g.Typed.Split(' ', '°')[0] == Digits(value))) Assert.DoesNotContain($" {Digits(value)} ", question);
        }
    }

    private static string Digits(AnswerValue value) => SampleWords.Renderer(English.UnitedKingdom).Say(value).Split(' ', '°')[0];

    private static void All(English english, Action<string> check)
    {
        foreach (Solution solution in Drawn.Value) check(Markdown(solution, english));
    }

    private static string Markdown(Solution solution, English english) => SampleWords.Renderer(english).Render(solution, Form.WorkedSolution, Output.Markdown);

    private static string Latex(Solution solution, English english) => SampleWords.Renderer(english).Render(solution, Form.WorkedSolution, Output.Latex);

    /// <summary>The decimals of a page, in order, whatever stands round them.</summary>
    private static string[] Numbers(string page) => [.. Regex.Matches(Regex.Replace(page, @"\\begin\{tabular\}.*|\\rule\[?.*?\}\{.*?\}", ""), @"\d+\.\d+(?![\dex])").Select(m => m.Value)];

    private static IEnumerable<Solution> Draw()
    {
        Random random = new(31);
        string[] values(int low, int high, string unit) => [.. Enumerable.Range(0, 3).Select(_ => random.Next(low, high) + unit)];
        for (int i = 0; i < Draws; i++)
        {
            string[] l = values(40, 79, random.Next(2) == 0 ? " cm" : ".5 m"), a = values(20, 80, "°");
            SolveResult[] results =
            [
                Ask.Triangle([("AB", l[0]), ("BC", l[1]), ("CA", l[2])], "angle ABC", "angle BCA"),
                Ask.Triangle([("AB", l[0]), ("AC", l[1]), ("angle BAC", a[0])], "BC", "angle ABC"),
                Ask.Triangle([("AC", l[0]), ("CB", l[1]), ("angle BAC", a[0])], "AB", "angle ABC"),
                Ask.Text("inaccessible distance", "ABC is a triangle", [("AB", l[0]), ("angle BAC", a[0]), ("angle ABC", a[1])], "AC", "BC", "distance from C to AB"),
            ];
            foreach (Solved solved in results.OfType<Solved>()) yield return solved.Solution;
        }
    }
}
