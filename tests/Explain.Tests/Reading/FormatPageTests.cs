using System.Globalization;
using System.Text.RegularExpressions;

namespace Explain.Tests.Reading;

/// <summary>The page on problem files says what is read, all of it, and nothing else.</summary>
public sealed class FormatPageTests
{
    private static readonly string Page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "problem-files.md"));

    [Fact]
    public void The_keys_are_those_of_the_table() => Assert.Equal(FileKeys.All.Select(k => k.Name), FirstColumn("Keys"));

    [Fact]
    public void The_codes_are_those_of_the_list()
    {
        Assert.Equal(ErrorCodes.All, FirstColumn("Errors"));
        Assert.Equal(ErrorCodes.Warnings, Typed(Section("Errors").Split("Warnings do not")[1]));
    }

    [Fact]
    public void Each_statement_reads_and_each_kind_is_there()
    {
        Statement[] read = [.. Columns("Statements", 0).Select(t => StatementGrammar.Read(t) ?? throw new InvalidOperationException(t))];
        Assert.Empty(Enum.GetValues<PlaceKind>().Except(read.OfType<Place>().Select(p => p.Kind)));
        Assert.Equal([false, true], read.OfType<Alike>().Select(a => a.Congruent).Distinct().Order());
        Assert.NotEmpty(read.OfType<Compare>());
    }

    [Fact]
    public void Each_quantity_reads_and_each_row_is_there()
    {
        Symbol[] read = [.. Columns("Quantities", 0).Concat(Columns("Quantities", 1)).Select(t => QuantityGrammar.Read(t) ?? throw new InvalidOperationException(t))];
        Assert.All(QuantityTable.Rows, row => Assert.Contains(read, q => row.Take(q) is not null));
        Assert.All(ExtraEntry.Keys, key => Assert.Contains($"`{key}`", Section("Quantities"), StringComparison.Ordinal));
    }

    [Fact]
    public void Each_thing_to_find_reads_and_each_row_and_kind_is_there()
    {
        Goal[] read = [.. Columns("Things to find", 1).Select(t => GoalReader.Read(t, out _) ?? throw new InvalidOperationException(t))];
        Assert.Empty(Enum.GetValues<GoalKind>().Except(read.Select(g => g.Kind)));
        string[] words = [.. GoalTable.Rows.Select(r => r.Row.In(English.UnitedKingdom).Text.Replace("A…C", "ABC", StringComparison.Ordinal))];
        Assert.Empty(words.Except(Columns("Things to find", 1)));
    }

    [Fact]
    public void Each_value_reads() => Assert.All(Columns("Values", 1), t => Assert.True(ValueReader.TryRead(t, out _, out _), t));

    [Fact]
    public void Topics_methods_roundings_and_units_are_those_that_are_read()
    {
        Assert.All(KnownTopics.All, k => Assert.Contains($"`{k.Id.Name}`", Page, StringComparison.Ordinal));
        Assert.All(MethodNames.All, m => Assert.Contains($"`{m}`", Section("Keys"), StringComparison.Ordinal));
        Assert.All(RoundEntry.Kinds, k => Assert.Contains($"`{k}`", Section("Keys"), StringComparison.Ordinal));
        Assert.All(Unit.Table, u => Assert.Contains(u.Symbol, Section("Values"), StringComparison.Ordinal));
        string[] rounds = [.. Typed(Row("Keys", "round")).Where(t => t.Contains(' ', StringComparison.Ordinal) || t == "exact")];
        Assert.All(rounds, r => Assert.True(RoundingReader.Read(r) is not null, r));
        Assert.True(rounds.Length > 5);
    }

    [Fact]
    public void The_limits_are_those_that_hold()
    {
        ReadingLimits own = ReadingLimits.Default;
        (string Name, int Most)[] raised =
        [
            (nameof(own.FileBytes), own.FileBytes / 1024), (nameof(own.Nesting), own.Nesting), (nameof(own.TextLength), own.TextLength), (nameof(own.Entries), own.Entries),
            (nameof(own.Points), own.Points), (nameof(own.Marks), own.Marks), (nameof(own.Shares), own.Shares), (nameof(own.Errors), own.Errors),
        ];
        int[] kept = [TextLimits.Tokens, TextLimits.Digits, TextLimits.Depth, TextLimits.Roots, TextLimits.Exponent, TextLimits.RoundingDigits];
        string[] expected = [.. raised.Select(r => $"{Number(r.Most)} `{r.Name}`"), .. kept.Select(k => $"{Number(k)} no")];
        Assert.Equal(expected, Rows("Limits").Select(r => $"{r[1].Replace(" KiB", "", StringComparison.Ordinal)} {r[2]}"));
        Assert.Equal(typeof(ReadingLimits).GetProperties().Length - 1, raised.Length);
    }

    [Fact]
    public void The_example_is_solved()
    {
        string text = Page.Split("```yaml\n")[1].Split("```")[0];
        Assert.Equal([], TestFile.Said(TestFile.Read(text)));
        Assert.IsType<Solved>(new Solver().Solve(TestFile.Read(text)));
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Section(string heading) => Page.Split($"\n## {heading}\n")[1].Split("\n## ")[0];

    /// <summary>The cells of the rows of a section's table.</summary>
    private static IEnumerable<string[]> Rows(string heading) => Section(heading).Split('\n').Where(l => l.StartsWith("| ", StringComparison.Ordinal)).Skip(1)
        .Select(l => (string[])[.. Regex.Split(l, @"(?<!\\)\|")[1..^1].Select(c => c.Trim().Replace("\\|", "|", StringComparison.Ordinal))]);

    private static string Row(string heading, string first) => string.Join(' ', Rows(heading).Single(r => r[0] == $"`{first}`"));

    private static IEnumerable<string> FirstColumn(string heading) => Columns(heading, 0);

    private static IEnumerable<string> Columns(string heading, int column) => Rows(heading).SelectMany(r => Typed(r[column]));

    private static IEnumerable<string> Typed(string text) => Regex.Matches(text, "`([^`]+)`").Select(m => m.Groups[1].Value);
}
