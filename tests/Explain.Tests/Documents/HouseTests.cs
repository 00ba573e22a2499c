using System.Text.RegularExpressions;
using Explain.Tests.Documents.Samples;

namespace Explain.Tests.Documents;

/// <summary>A house changes single wordings and single templates, and hears of every mistake before anything is printed.</summary>
public sealed class HouseTests
{
    [Fact]
    public void OneWording_ChangesOnlyTheLinesThatUseIt()
    {
        string[] before = Page(House.None), after = Page(Of("house.wording.yaml", "step.find: work out {what}\n"));
        Assert.Equal(before.Length, after.Length);
        Assert.All(before.Zip(after), p => Assert.Equal(Regex.Replace(p.First, @"^(\*\*Step \d+\.) Find ([A-Z]{2}\.\*\*)", "$1 Work out $2"), p.Second));
        Assert.NotEqual(before, after);
    }

    [Fact]
    public void AWordingOfTheOtherEnglish_ChangesNothing() => Assert.Equal(Page(House.None), Page(Of("us.wording.yaml", "step.find: work out {what}\n")));

    [Fact]
    public void OneTemplate_ChangesOnlyItsBlocks()
    {
        string[] after = Page(Of("markdown/step.scriban", "### {{ number }} {{ title }}\n\n{{ reason }}{{ for part in body }}\n\n{{ part }}{{ end }}\n"));
        Assert.Contains("### Step 1. Find the third angle.", after);
        Assert.DoesNotContain(after, l => l.StartsWith("**Step", StringComparison.Ordinal));
        Assert.Contains("**Given.** PQ = 120 m, angle QPT = 62°, angle PQT = 71°.", after);
    }

    [Fact]
    public void ATemplateOfAnotherOutput_ChangesNothing() => Assert.Equal(Page(House.None), Page(Of("latex/step.scriban", "{{ number }}")));

    [Theory]
    [InlineData("step.fnid: work out {what}", "step.fnid", null, "step.find")]
    [InlineData("step.find: work out {waht}", "step.find", "waht", "what")]
    [InlineData("sine-ratio: \"right-angled at {croner}: {opposite} is opposite {angle}\"", "sine-ratio", "croner", "corner")]
    [InlineData("not-acute: this angle is not the one", "not-acute", "given", null)]
    public void AMisspeltWording_IsAnErrorWithASuggestion(string line, string id, string? placeholder, string? suggestion)
    {
        WordingException error = Assert.Throws<WordingException>(() => Page(Of("house.wording.yaml", line)));
        Assert.Equal((id, placeholder, suggestion), (error.Id, error.Placeholder, error.Suggestion));
    }

    [Theory]
    [InlineData("step.find: find {what} in 7 steps", "7")]
    [InlineData("angle-sum-of-a-triangle: \"the angles of a triangle add up to 190°\"", "190")]
    [InlineData("sine-ratio: \"{opposite} is opposite {angle} in {triangle} at {corner}, so look at angle AXQ\"", "AXQ")]
    [InlineData("list.two-and: \" and ½ of \"", "½")]
    [InlineData("page.plan: Plan B", "B")]
    [InlineData("page.assumptions: \"{n|one=assumption|other=2 assumptions}\"", "2")]
    public void AWordingWithANumberOrANameOfItsOwn_IsAnError(string line, string stranger)
    {
        Assert.Equal(stranger, Assert.Throws<WordingException>(() => Page(Of("house.wording.yaml", line))).Stranger);
        Assert.Equal(stranger, Assert.Throws<WordingException>(() => new Renderer(new RendererOptions { Wording = [line] })).Stranger);
    }

    [Theory]
    [InlineData("angle-sum-of-a-triangle: \"in every triangle the angles make 180°\"")]
    [InlineData("number.4: 4")]
    [InlineData("cosine-rule.again: \"cosine rule (SAS or SSS). A side, {side}, is opposite {between}\"")]
    public void TheNumbersOfTheRuleItself_MayStandInAWording(string line) => Assert.NotEmpty(Page(Of("house.wording.yaml", line)));

    [Theory]
    [InlineData("step.find: {what")]
    [InlineData("step.find work out {what}")]
    public void ALineThatCannotBeRead_IsAnError(string line) => Assert.Throws<WordingException>(() => Page(Of("house.wording.yaml", line)));

    [Theory]
    [InlineData("stpe.scriban", "{{ number }}")]
    [InlineData("step.scriban", "{{ if }}")]
    [InlineData("step.scriban", "{{ nubmer }}")]
    [InlineData("step.scriban", "{{ include 'heading' }}")]
    [InlineData("step.scriban", "{{ date.now }}")]
    [InlineData("step.scriban", "{{ object.eval '1' }}")]
    [InlineData("step.scriban", "{{ while true }}x{{ end }}")]
    [InlineData("step.scriban", "{{ for i in 1..100000000 }}x{{ end }}")]
    [InlineData("step.scriban", "{{ for i in 1..99999 }}0123456789abcdef{{ end }}")]
    [InlineData("step.scriban", "{{ x = 'abcdefghij'; for i in 1..30; x = x + x; end; x }}")]
    public void ATemplateThatMisbehaves_IsAnError(string file, string text) => Assert.Throws<TemplateException>(() => Page(Of(file, text)));

    private static House Of(string file, string text) => House.Of(KeyValuePair.Create(file, text));

    private static string[] Page(House house) => SampleWords.Renderer(English.UnitedKingdom, house: house).Render(Mast.Solution, Form.WorkedSolution, Output.Markdown).Split('\n');
}
