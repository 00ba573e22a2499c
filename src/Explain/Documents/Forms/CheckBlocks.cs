namespace Explain;

/// <summary>Checks: each says which part it tests, shows its line, and ends with a tick.</summary>
internal sealed class CheckBlocks(Page page)
{
    private const string Tick = " ✓";
    private readonly CalculationLines lines = new(page);

    public IEnumerable<Block> Of(Section section)
    {
        Items<Step> steps = section.Passage.Steps;
        for (int i = 0; i < steps.Count; i++)
        {
            bool last = i == steps.Count - 1;
            Items<Inline> lead = i == 0 && Tested(section) is { Length: > 0 } letters
                ? [new Emphasis([.. page.Speaker.And([.. letters.Select(l => page.Speaker.Say(PageWords.Letter(l)))]), new WordRun(".")])] : [];
            Items<Inline> reason = page.Reason(steps[i]);
            Items<Inline> says = steps[i] is Calculation ? [] : [.. page.Speaker.Say(steps[i].Says), new WordRun(": ")];
            bool tests = steps[i] is Deduction && (last || steps[i + 1] is Calculation);
            yield return new ParagraphBlock([], [.. Sentence.Join([lead, Sentence.Of([.. says, .. reason])]), .. tests ? [new WordRun(Tick)] : (Items<Inline>)[]]) { Of = [steps[i].Id] };
            if (steps[i] is Calculation calculation) yield return new DisplayBlock([lines.Chain(calculation)]) { Of = [calculation.Id] };
        }

        foreach (Block remark in page.Remarks(section.Passage.Remarks)) yield return remark;
    }

    /// <summary>The letters whose answers the check leans on; its own letter where it leans on none.</summary>
    private string[] Tested(Section section)
    {
        HashSet<ClaimId> leant = [.. section.Passage.Steps.OfType<Calculation>().SelectMany(c => c.Bindings).Select(b => b.Is).OfType<ValueOf>().Select(v => v.Claim)];
        string[] letters = [.. page.Solution.Parts.Where(p => p.Answers.SelectMany(a => a.Values).Any(v => leant.Contains(v.From))).Select(p => p.Letter).OfType<string>()];
        return letters.Length > 0 ? letters : section.Part.Letter is { } own ? [own] : [];
    }
}
