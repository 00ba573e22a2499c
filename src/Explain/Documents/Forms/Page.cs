namespace Explain;

/// <summary>What every part of a page needs: the solution, its order and numbers, and how it is said.</summary>
internal sealed class Page
{
    public Page(Solution solution, WordingTable table, MathStyle style, Detail detail)
    {
        Solution = solution;
        Detail = detail;
        Sections = PageOrder.Of(solution);
        Numbers = new StepNumbers(Sections, detail);
        Claims = new SolutionClaims(solution, Numbers);
        Speaker = new Speaker(table, style, Claims);
    }

    public Solution Solution { get; }

    public Detail Detail { get; }

    public Items<Section> Sections { get; }

    public StepNumbers Numbers { get; }

    public SolutionClaims Claims { get; }

    public Speaker Speaker { get; }

    /// <summary>The reason of a step, shorter where the page has used its rule before.</summary>
    public Items<Inline> Reason(Step step) => Speaker.Reason(step.Why, Numbers.IsAgain(step.Id));

    /// <summary>A phrase as a sentence.</summary>
    public Items<Inline> Sentence(Phrase phrase) => Explain.Sentence.Of(Speaker.Say(phrase));

    /// <summary>The remarks that the page prints.</summary>
    public IEnumerable<Block> Remarks(Items<Remark> remarks) =>
        Detail == Detail.Brief ? [] : remarks.Select(r => new RemarkBlock(Sentence(r.Says)));
}
