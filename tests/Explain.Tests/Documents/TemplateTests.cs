using System.Text.RegularExpressions;

namespace Explain.Tests.Documents;

public sealed class TemplateTests
{
    private static readonly string[] Outputs = ["markdown", "latex"];

    [Fact]
    public void EveryBlock_HasATemplateInEveryOutput()
    {
        string[] blocks = [.. typeof(Block).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(Block)))
            .Select(t => Regex.Replace(t.Name[..^"Block".Length], "(?<=.)([A-Z])", "-$1").ToLowerInvariant()).Append("page").Order()];
        foreach (string output in Outputs)
            Assert.Equal(blocks, Resources.Names($"templates/{output}/").Select(n => Path.GetFileNameWithoutExtension(n)).Order());
    }

    [Fact]
    public void NoTemplate_KnowsATopicOrAPhrase()
    {
        string[] ids = [.. WordingTable.For(English.UnitedKingdom).Ids.Where(i => i.Contains('-') || i.Contains('.')), .. Topics.Standard.All.Select(t => t.Id.Name)];
        foreach (string output in Outputs)
            foreach (string template in Resources.Names($"templates/{output}/"))
                Assert.DoesNotContain(ids, Resources.Read(template).Contains);
    }

    [Fact]
    public void EveryPlaceholder_IsDescribed()
    {
        string described = File.ReadAllText(Path.Combine(Repository.Root, "docs", "blocks.md"));
        foreach (string output in Outputs)
        {
            foreach (string template in Resources.Names($"templates/{output}/"))
            {
                string text = Resources.Read(template);
                string[] own = [.. Regex.Matches(text, @"for (\w+) in").Select(m => m.Groups[1].Value)];
                foreach (Match name in Regex.Matches(text, @"\{\{[-~]? (?:if |for \w+ in )?([a-z]+)"))
                    if (!own.Contains(name.Groups[1].Value) && name.Groups[1].Value is not ("if" or "for" or "end" or "else")) Assert.Contains($"`{name.Groups[1].Value}`", described);
            }
        }
    }
}
