using System.Text;
using CsCheck;
using Markdig;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Explain.Tests.Documents;

/// <summary>What a user typed comes out as it was typed, in every output.</summary>
public sealed class EscapingTests
{
    private const string Signs = "ab AB12.,;:!?'\"`*_-+=~^|\\/<>()[]{}#$%&@éßł°×–…₁√";
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().UseMathematics().UsePipeTables().UseEmphasisExtras(Markdig.Extensions.EmphasisExtras.EmphasisExtraOptions.Strikethrough).UseAutoLinks().Build();
    private static readonly Gen<string> Typed = Gen.Char[Signs].Array[1, 40].Select(c => string.Join(' ', new string(c).Split(' ', StringSplitOptions.RemoveEmptyEntries))).Where(t => t.Length > 0);

    [Fact]
    public void Markdown_PrintsTheUsersTextAsItStands() => Typed.Sample(typed =>
    {
        string page = Render(typed, Output.Markdown);
        MarkdownDocument parsed = Markdown.Parse(page, Pipeline);
        Markdig.Syntax.HeadingBlock heading = (Markdig.Syntax.HeadingBlock)parsed[0];
        Assert.Equal(typed, Plain(heading.Inline!));
        Assert.Equal("Question. " + typed, Plain(((Markdig.Syntax.ParagraphBlock)parsed[1]).Inline!));
        Assert.Equal(typed, Plain(((Markdig.Syntax.ParagraphBlock)parsed[2]).Inline!));
    }, iter: 2000);

    [Theory]
    [InlineData("# not a heading")]
    [InlineData("1. not a list")]
    [InlineData("12) not a list")]
    [InlineData("- not a list")]
    [InlineData("> not a quotation")]
    [InlineData("=== not a heading")]
    [InlineData("| not | a table |")]
    [InlineData("<script>alert(1)</script> &amp; {{ include 'secret' }}")]
    [InlineData("<!-- not hidden --> <?not hidden?>")]
    [InlineData("http://example.invalid/ **not bold** $x$ ~~not struck~~")]
    public void Markdown_OpensNothing(string typed)
    {
        MarkdownDocument parsed = Markdown.Parse(Render(typed, Output.Markdown), new MarkdownPipelineBuilder().UseMathematics().UsePipeTables().UseEmphasisExtras(Markdig.Extensions.EmphasisExtras.EmphasisExtraOptions.Strikethrough).Build());
        Assert.Equal(3, parsed.Count);
        Assert.Equal(typed, Plain(((Markdig.Syntax.ParagraphBlock)parsed[2]).Inline!));
    }

    [Fact]
    public void Latex_HoldsNoCommandOfTheUsers() => Typed.Sample(typed =>
    {
        string text = new LatexWriter(["A", "B"]).Write([new UserRun(typed)]);
        Assert.Equal(Simple(typed), Simple(Unescape(text)));
    }, iter: 2000);

    [Theory]
    [InlineData("50% & more_$5", @"50\% \& more\_\$5")]
    [InlineData(@"\input{/etc/passwd}", @"\textbackslash{}input\{/etc/passwd\}")]
    [InlineData("A line AB, 2.5 m long, at 38° to BA", @"A line $AB$, 2.5~m long, at $38^\circ$ to $BA$")]
    [InlineData("A, B and C are not ABC", @"$A$, $B$ and C are not ABC")]
    [InlineData("B₁ 中", @"$B_1$ [U+4E2D]")]
    public void Latex_SetsNamesOfTheFigureAndNothingElse(string typed, string expected) =>
        Assert.Equal(expected, new LatexWriter(["A", "B", "B₁"]).Write([new UserRun(typed)]));

    private static string Render(string typed, Output output) =>
        new Renderer().Render(new Problem { Title = typed, Question = typed + "\n\n" + typed }, output);

    private static string Plain(ContainerInline inlines)
    {
        StringBuilder plain = new();
        foreach (Markdig.Syntax.Inlines.Inline inline in inlines)
        {
            plain.Append(inline switch
            {
                LiteralInline literal => literal.Content.ToString(),
                EmphasisInline { DelimiterChar: '*', DelimiterCount: 2 } strong when inlines.FirstChild == strong => Plain(strong),
                HtmlEntityInline entity => entity.Original.ToString(),
                _ => $"[{inline.GetType().Name}]",
            });
        }

        return plain.ToString();
    }

    /// <summary>What a reader of the printed page sees.</summary>
    private static string Unescape(string tex)
    {
        (string Tex, string Seen)[] commands =
        [
            (@"\textbackslash{}", "\\"), (@"\textasciicircum{}", "^"), (@"\textasciitilde{}", "~"), (@"\textasciigrave{}", "`"), (@"\symbol{34}", "\""),
            (@"$\times$", "×"), (@"$^\circ$", "°"), (@"^\circ$", "°"), (@"$\ldots$", "…"), (@"$\surd$", "√"), ("$<$", "<"), ("$>$", ">"), ("$|$", "|"),
        ];
        StringBuilder seen = new();
        for (int i = 0; i < tex.Length;)
        {
            (string Tex, string Seen) command = commands.FirstOrDefault(c => string.CompareOrdinal(tex, i, c.Tex, 0, c.Tex.Length) == 0);
            if (command.Tex is not null)
            {
                seen.Append(command.Seen);
                i += command.Tex.Length;
                continue;
            }

            if (tex[i] == '\\')
            {
                Assert.Contains(tex[i + 1], "{}$&#%_");
                seen.Append(tex[i + 1]);
                i += 2;
                continue;
            }

            Assert.DoesNotContain(tex[i], "{}&#%^");
            if (tex[i] == '_') Assert.Equal('$', tex[i + 2]);
            seen.Append(tex[i] switch { '$' => "", '~' => " ", '_' => "", _ => tex[i].ToString() });
            i++;
        }

        return seen.ToString();
    }

    private static string Simple(string text) => text.Replace('₁', '1').Replace('\u00A0', ' ');
}
