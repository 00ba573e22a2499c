using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis;

namespace Explain.Generators.Tests;

/// <summary>Holds the page of diagnostics, the descriptors, the release files and the tests to one another.</summary>
public partial class DiagnosticPageTests
{
    private static readonly Dictionary<string, string> Sections = Read();

    public static TheoryData<string> Ids => [.. Sections.Keys];

    [Fact]
    public void Page_releases_and_generator_have_the_same_ids()
    {
        string[] emitted = [.. Descriptors.Ids.Order(StringComparer.Ordinal)];
        string releases = File.ReadAllText(Path.Combine(Repository.Root, "src/Explain.Generators/AnalyzerReleases.Unshipped.md")) + File.ReadAllText(Path.Combine(Repository.Root, "src/Explain.Generators/AnalyzerReleases.Shipped.md"));
        Assert.Equal(emitted, Sections.Keys);
        Assert.Equal(emitted, Id().Matches(releases).Select(m => m.Value));
    }

    [Fact]
    public void Every_descriptor_is_emitted_and_every_id_tested()
    {
        string source = Text("src/Explain.Generators"), tests = Text("tests/Explain.Generators.Tests");
        Assert.All(typeof(Descriptors).GetFields().Where(f => f.FieldType == typeof(DiagnosticDescriptor)), field => Assert.Contains("Descriptors." + field.Name, source, StringComparison.Ordinal));
        Assert.All(Descriptors.Ids, id => Assert.Matches($"\"{id} [A-Za-z.]+\\(", tests));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_wrong_example_yields_the_id_and_the_right_one_compiles(string id)
    {
        string[] halves = Sections[id].Split("\nRight:\n");
        DiagnosticDescriptor descriptor = Descriptors.Find(id);
        Assert.StartsWith($"{descriptor.DefaultSeverity}: {descriptor.Title.ToString(null)}. ", halves[0], StringComparison.Ordinal);
        Assert.All(Example(halves[0]).Run().Findings, finding => Assert.StartsWith(id, finding, StringComparison.Ordinal));
        Assert.NotEmpty(Example(halves[0]).Run().Findings);
        Example(halves[1]).Run().Compiles();
    }

    [Fact]
    public void The_example_of_the_page_on_explained_methods_compiles()
    {
        string page = File.ReadAllText(Path.Combine(Repository.Root, "docs/explained-methods.md"));
        Sample.Of("using System;\n" + Assert.Single(Block().Matches(page)).Groups[2].Value).Run().Compiles();
    }

    private static Sample Example(string half)
    {
        Sample sample = Sample.Of("");
        foreach (Match block in Block().Matches(half))
        {
            string text = block.Groups[2].Value;
            string file = block.Groups[1].Value == "csharp" ? "Test.cs" : text.StartsWith("# ", StringComparison.Ordinal) ? text[2..text.IndexOf('\n')] : "uk.wording.yaml";
            sample = sample.With(file, file == "Test.cs" ? "using System;\nusing Explain;\nusing static Explain.DegreeTrigonometry;\n" + text : text);
        }

        return sample;
    }

    private static Dictionary<string, string> Read() => File.ReadAllText(Path.Combine(Repository.Root, "docs/diagnostics.md")).Split("\n## ").Skip(1)
        .Select(s => s.Split('\n', 2)).ToDictionary(s => s[0], s => s[1].Trim());

    private static string Text(string folder) => string.Concat(Directory.EnumerateFiles(Path.Combine(Repository.Root, folder), "*.cs", SearchOption.AllDirectories)
        .Where(f => !f.Contains("/obj/", StringComparison.Ordinal)).Select(File.ReadAllText));

    [GeneratedRegex("EXPL\\d{3}")]
    private static partial Regex Id();

    [GeneratedRegex("```(csharp|yaml)\n(.*?)\n```", RegexOptions.Singleline)]
    private static partial Regex Block();
}
