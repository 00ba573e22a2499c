namespace Explain;

/// <summary>The values that the cases of a split begin with, side by side as one step, and their tests as a list.</summary>
internal sealed class LeadingBlocks(Page page, CalculationLines lines, PassageBlocks blocks)
{
    private readonly ComparisonLine comparison = new(page.Speaker, page.Claims);

    public IEnumerable<Block> Of(Split split)
    {
        Calculation first = Leading.Value(split.Cases[0]);
        Items<Inline> title = split.Title is { } own ? page.Sentence(own) : page.Sentence(StepWords.PossibleValues(first.Target));
        yield return blocks.Block(split, blocks.Reason(split), [new DisplayBlock([Values(split)])]) with { Title = title, Of = [split.Id, .. split.Cases.Select(c => Leading.Value(c).Id)] };
        Step test = Leading.Tests(split.Cases[0])[0];
        Items<Inline> reason = Sentence.Join(split.Cases.Select(c => blocks.Reason(Leading.Tests(c)[0])).Distinct());
        yield return new StepBlock(blocks.Number([page.Numbers.Of(test.Id)!]), page.Sentence(StepWords.TestEach()), reason, [new ListBlock(Numbered: false, [.. split.Cases.Select((c, i) => Test(split, c, i))])]) { Of = [.. split.Cases.SelectMany(c => Leading.Tests(c)).Select(t => t.Id)] };
    }

    /// <summary>angle ABC = 58.769…° or 180° − 58.769…° = 121.230…°.</summary>
    private MathRow Values(Split split)
    {
        Calculation first = Leading.Value(split.Cases[0]);
        MathJoin or = new(string.Concat(page.Speaker.Say(StepWords.Or()).OfType<WordRun>().Select(w => w.Text)));
        IEnumerable<MathPiece> others = split.Cases.Skip(1).Select(Leading.Value).SelectMany(c => (MathPiece[])[or, .. Of(lines.Numbers(c, by: first))]);
        return new([.. Of(lines.Chain(first)), .. others], MathLevel.Relation);
    }

    /// <summary>38° + 58.769…° = 96.769…° &lt; 180°, so this angle is possible; and what else follows at once.</summary>
    private Items<Inline> Test(Split split, Case one, int at)
    {
        Items<Step> tests = Leading.Tests(one);
        Items<Inline> numbers = tests[0].Says is Compare compare && comparison.Numbers(compare, tests[0].Why.From) is { } line ? [new MathRun(line)] : page.Speaker.Say(tests[0].Says);
        bool again = split.Cases.Take(at).Any(c => c.End == CaseEnd.Holds);
        Phrase outcome = one.End switch
        {
            CaseEnd.Impossible => StepWords.NotPossible(),
            CaseEnd.NotThisProblem => StepWords.NotAsked(),
            _ => again ? StepWords.PossibleToo() : StepWords.Possible(),
        };
        return Sentence.Of([.. numbers, new WordRun(", "), .. page.Speaker.Say(outcome), .. tests.Skip(1).SelectMany(t => (Inline[])[new WordRun("; "), .. page.Reason(t)])]);
    }

    private static Items<MathPiece> Of(MathPiece piece) => piece is MathRow { Level: MathLevel.Relation } row ? row.Of : [piece];
}
