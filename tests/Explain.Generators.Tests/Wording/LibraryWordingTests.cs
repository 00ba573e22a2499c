using System.Collections.Immutable;
using Microsoft.CodeAnalysis;

namespace Explain.Generators.Tests.Wording;

/// <summary>The library's own wording files: in order, sorted, and without a line that could be missing unnoticed.</summary>
public class LibraryWordingTests
{
    private static readonly Sample Library = new()
    {
        Sources = Files("src/Explain", "*.cs").Add("Usings.cs", "global using System; global using System.Linq; global using System.Collections.Generic;"),
        Wordings = Files("templates/wording", "*.wording.yaml"),
    };

    private static readonly Wanted[] Declared = Wanted();

    [Fact]
    public void The_files_are_in_order() => Assert.Empty(Check(Library.Wordings));

    [Fact]
    public void The_lines_of_each_file_are_sorted() => Assert.All(Library.Wordings, file =>
    {
        string[] ids = [.. WordingFile.Read(file.Value).Lines.Select(l => l.Id)];
        Assert.Equal(ids.Order(StringComparer.Ordinal), ids);
    });

    /// <summary>US lines that differ in style and hold no word of one English only, so that the UK line would serve: commas in lists, ways of rounding, headings.</summary>
    private static readonly string[] Style =
    [
        "angle-sum-of-a-triangle", "equilateral-triangle-angles", "isosceles-angle-sum", "isosceles-triangle", "isosceles-triangle-converse",
        "list.last-and", "list.last-or", "move.add", "move.divide", "move.inverse", "move.invert", "move.multiply", "move.root",
        "move.square", "move.subtract", "no-room-for-a-third-angle", "page.working", "plan.count-first", "pythagoras",
        "plan.pythagoras", "pythagoras-converse", "room-for-a-third-angle",
        "rounding.note", "rounding.one-place", "rounding.three-places", "rounding.two-places",
    ];

    [Fact]
    public void A_line_taken_out_breaks_the_build_and_is_named()
    {
        HashSet<string> optional = [.. Declared.Where(d => d.IsOptional).Select(d => d.Id)];
        foreach ((string name, string text) in Library.Wordings.Where(w => !w.Key.StartsWith(OtherEnglish.FileName, StringComparison.Ordinal)))
        {
            foreach (WordingLine line in WordingFile.Read(text).Lines.Where(l => !optional.Contains(l.Id) && !(name.StartsWith("us.", StringComparison.Ordinal) && Style.Contains(l.Id))))
            {
                IReadOnlyList<Finding> findings = Check(Library.Wordings.SetItem(name, text.Remove(line.Start, line.Length)));
                Assert.True(findings.Any(f => f.ToDiagnostic().GetMessage(null).Contains(line.Id + ": \"", StringComparison.Ordinal)),
                    $"{name}: nobody would miss {line.Id}; pair the words that differ in words.wording.yaml");
            }
        }
    }

    private static IReadOnlyList<Finding> Check(IEnumerable<KeyValuePair<string, string>> files) =>
        new WordingChecks(Declared, files.Select(w => new WordingText(w.Key, w.Value)), whole: true).Run();

    private static Wanted[] Wanted()
    {
        GeneratorRunResult result = Library.Run().Result;
        return
        [
            .. Outputs<Reading<PhraseModel>>(StageNames.PhraseReadings).Select(r => Generators.Wanted.Of(r.Model!, r.At)),
            .. Outputs<Reading<RuleModel>>(StageNames.RuleReadings).SelectMany(r => Generators.Wanted.Of(r.Model!, r.At)),
        ];

        IEnumerable<T> Outputs<T>(string stage) => result.TrackedSteps.TryGetValue(stage, out var steps) ? steps.SelectMany(s => s.Outputs).Select(o => (T)o.Value) : [];
    }

    private static ImmutableSortedDictionary<string, string> Files(string folder, string pattern) =>
        ImmutableSortedDictionary.CreateRange(Directory.EnumerateFiles(Path.Combine(Repository.Root, folder), pattern, SearchOption.AllDirectories)
            .Where(f => !f.Contains("/obj/", StringComparison.Ordinal)).Select(f => KeyValuePair.Create(pattern == "*.cs" ? f : Path.GetFileName(f), File.ReadAllText(f))));
}
