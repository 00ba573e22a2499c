using System.Runtime.CompilerServices;

namespace Explain.Tests.Documents.Auditing;

/// <summary>Every number, name, step, text and reason of a page in turn is exchanged for one that is not its own; each time nothing is printed.</summary>
public sealed class PlantedStrangerTests
{
    public static TheoryData<string> Demos => [.. Directory.EnumerateFiles(Folder(), "*.yaml").Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Demos))]
    public void ThePageAsItIs_IsPrinted(string demo)
    {
        Audited audited = Of(demo);
        Assert.Empty(audited.Findings(audited.Document));
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void EveryLongNumber_WithAnotherLastDigit_IsAStranger(string demo) => AllRefused(Of(demo), _ => null,
        p => p is MathNumber { Digits.Length: > 2 } n ? n with { Digits = n.Digits[..^1] + (char)('0' + ((n.Digits[^1] - '0' + 1) % 10)) } : null, least: 5);

    [Theory]
    [MemberData(nameof(Demos))]
    public void EveryLongNumber_WithTwoDigitsExchanged_IsAStranger(string demo) => AllRefused(Of(demo), _ => null,
        p => p is MathNumber { Digits: [.., >= '0' and var first, >= '0' and var last] digits, Continues: true } n && first != last ? n with { Digits = digits[..^2] + last + first } : null, least: 2);

    [Theory]
    [MemberData(nameof(Demos))]
    public void EveryNumber_ExchangedForAForeignOne_IsAStranger(string demo) =>
        AllRefused(Of(demo), _ => null, p => p is MathNumber n ? n with { Digits = "7351.9" } : null, least: 10);

    [Theory]
    [MemberData(nameof(Demos))]
    public void EveryCutNumber_AsIfItEnded_IsAStranger(string demo) =>
        AllRefused(Of(demo), _ => null, p => p is MathNumber { Continues: true } n ? n with { Continues = false } : null, least: 2);

    [Theory]
    [MemberData(nameof(Demos))]
    public void EveryName_WithAForeignPoint_IsAStranger(string demo) =>
        AllRefused(Of(demo), _ => null, p => p is MathName n ? new MathName(n.Letters[..^1] + "Z") : null, least: 10);

    [Theory]
    [MemberData(nameof(Demos))]
    public void EveryReason_ExchangedForTheWordsOfAnother_IsAStranger(string demo)
    {
        Solution solution = Solved(demo);
        string[] used = [.. solution.Steps.Select(s => s.Why.Rule.Name)];
        string other = RuleBook.Standard.Rules.Select(r => r.Id.Name).First(r => !used.Contains(r));
        AllRefused(new(solution), i => i is WordRun { From: { } id } && used.Contains(id) ? Worded(other) : null, _ => null, least: 2);

        static WordRun Worded(string rule) => new(WordingTable.For(English.UnitedKingdom).Find(rule)!.Value.OfType<WordingWords>().First().Text, rule);
    }

    [Fact]
    public void AReasonOfAnotherStepOfThePage_IsAStranger()
    {
        Solution solution = Solved("mast.yaml");
        AllRefused(new(solution), i => i is WordRun { From: "angle-sum-of-a-triangle" } ? new WordRun(" is opposite ", "sine-rule") : null, _ => null, least: 1);
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void EveryWord_WithANumberOrANamePlantedInIt_IsAStranger(string demo)
    {
        AllRefused(Of(demo), i => i is WordRun w ? w with { Text = w.Text + "7" } : null, _ => null, least: 10);
        AllRefused(Of(demo), i => i is WordRun w ? w with { Text = w.Text + " PZ " } : null, _ => null, least: 10);
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void EveryTextOfTheUser_ThatTheUserDidNotType_IsAStranger(string demo) =>
        AllRefused(Of(demo), i => i is UserRun u ? u with { Text = u.Text + " 12" } : null, _ => null, least: 2);

    [Fact]
    public void AStepThatIsNotThere_IsAStranger()
    {
        Audited audited = Of("mast.yaml");
        AllRefused(audited, i => i is StepRun s ? s with { Number = s.Number + "9" } : null, _ => null, least: 5);
    }

    [Fact]
    public void AFinding_NamesTheStepOfItsPlace()
    {
        Audited audited = Of("mast.yaml");
        Items<Finding> found = audited.Each(_ => null, p => p is MathNumber { Digits: "105.785" } n ? n with { Digits = "105.758" } : null).First().Findings;
        Assert.Equal([new Finding("V8", new ClaimId("s2"), "number 105.758…")], found);
    }

    private static void AllRefused(Audited audited, Func<Inline, Inline?> inline, Func<MathPiece, MathPiece?> piece, int least)
    {
        (object From, object To, Items<Finding> Findings)[] planted = [.. audited.Each(inline, piece)];
        Assert.True(planted.Length >= least, $"{planted.Length} planted");
        Assert.Empty(planted.Where(p => p.Findings.Count == 0).Select(p => $"{p.From} → {p.To}"));
    }

    private static Audited Of(string demo) => new(Solved(demo));

    private static Solution Solved(string demo) => ((Solved)new Solver().Solve(Problem.Load(Path.Combine(Folder(), demo)))).Solution;

    private static string Folder([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", "..", "docs", "problems"));
}
