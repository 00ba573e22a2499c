using Explain.Tests.Documents.Samples;

namespace Explain.Tests.Documents.Auditing;

/// <summary>What a house's template brings of its own is found on the finished page.</summary>
public sealed class TemplateAuditTests
{
    [Theory]
    [InlineData("markdown/remark.scriban", "*{{ text }}* 7", "template number 7")]
    [InlineData("markdown/step.scriban", "**{{ number }}** {{ 3 + 4 }} {{ title }}{{ for part in body }}\n\n{{ part }}{{ end }}", "template number 7")]
    [InlineData("markdown/step.scriban", "**{{ number }}** {{ '\\u0037' }} {{ title }}{{ for part in body }}\n\n{{ part }}{{ end }}", "template number 7")]
    [InlineData("markdown/heading.scriban", "## {{ text }} for X", "template name X")]
    [InlineData("markdown/heading.scriban", "## {{ text }} in triangle PQT", "template name PQT")]
    [InlineData("markdown/heading.scriban", "## {{ text }}, level {{ level }}", "template number ")]
    [InlineData("markdown/heading.scriban", "7. {{ text }}", "template number 7")]
    [InlineData("markdown/heading.scriban", "## {{ text[0] }}", "template part")]
    [InlineData("markdown/heading.scriban", "## {{ text }}, ½ done", "template number ½")]
    [InlineData("latex/heading.scriban", @"\textbf{ {{- text }} 7}", "template number 7")]
    [InlineData("latex/heading.scriban", @"\textbf{ {{- text }}} 7cm", "template number 7")]
    [InlineData("latex/heading.scriban", @"\textbf{ {{- text }}} {{ label }} 7", "template number 7")]
    public void ATemplateThatBringsAStranger_PrintsNothing(string file, string template, string detail)
    {
        PrintAuditException audit = Assert.Throws<PrintAuditException>(() => Page(file, template));
        Assert.Contains(audit.Findings, f => f.Detail.StartsWith(detail, StringComparison.Ordinal));
        Assert.Contains("V8", audit.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("markdown/heading.scriban", "<h2 class=\"level-2\">{{ text }}</h2>")]
    [InlineData("markdown/heading.scriban", "## A heading: {{ text }}")]
    [InlineData("latex/heading.scriban", @"\vspace{2.5ex}\noindent\hspace*{0.25\linewidth}\textbf{ {{- text }}}{{ if label }}\label{ {{- label -}} }{{ end }}")]
    public void MarkupWithNumbers_IsNoStranger(string file, string template) => Assert.NotEmpty(Page(file, template));

    [Fact]
    public void NoMark_IsLeftOnAPage()
    {
        Problem hostile = Mast.Solution.Of with { Title = "A \uFDD0mast\uFDD1 of 12 m" };
        string page = SampleWords.Renderer(English.UnitedKingdom).Render(hostile, Output.Markdown);
        Assert.StartsWith("# A \uFFFDmast\uFFFD of 12 m\n", page, StringComparison.Ordinal);
        Assert.DoesNotContain(page, c => c is '\uFDD0' or '\uFDD1');
    }

    private static string Page(string file, string template) => SampleWords
        .Renderer(English.UnitedKingdom, house: House.Of(KeyValuePair.Create(file, template + "\n")))
        .Render(Mast.Solution, Form.WorkedSolution, file.StartsWith("latex", StringComparison.Ordinal) ? Output.Latex : Output.Markdown);
}
