namespace Explain;

/// <summary>Checks: each says which part it tests, shows its line, and ends with a tick.</summary>
internal sealed class CheckBlocks(Page page)
{
    private const string Tick = " ✓";
    private readonly CalculationLines lines = new(page);

    public IEnumerable<Block> Of(Section section)
    {
        Items<Step> steps = section.Passage.Steps;
        Items<Inline> lead = Tested(section) is { Length: > 0 } letters ? [new Emphasis([.. page.Speaker.And([.. letters.Select(l => page.Speaker.Say(PageWords.Letter(l)))]), new WordRun(".")])] : [];
        for (int i = 0; i < steps.Count; lead = [])
        {
            if (steps[i] is not Deduction)
            {
                Items<ClaimId> of = [.. Solution.Within(steps[i]).Select(s => s.Id)];
                yield return new ParagraphBlock([], Sentence.Join([lead, Letter(steps[i]), Sentence.Of(page.Reason(steps[i]))])) { Of = of };
                yield return new DisplayBlock(Display(steps[i++])) { Of = of };
                continue;
            }

            Deduction[] tests = [.. steps.Skip(i).TakeWhile(s => s is Deduction).Cast<Deduction>()];
            yield return new ParagraphBlock([], Sentence.Join(tests.Select(Test).Prepend(lead))) { Of = [.. tests.Select(t => t.Id)] };
            i += tests.Length;
        }

        foreach (Block remark in page.Remarks(section.Passage.Remarks)) yield return remark;
    }

    private Items<MathPiece> Display(Step step) => step switch
    {
        Calculation c => [lines.Chain(c)],
        Quadratic q => new QuadraticLines(page).Of(q),
        _ => throw new ArgumentException(step.GetType().Name, nameof(step)),
    };

    /// <summary>Write AB = t.</summary>
    private Items<Inline> Letter(Step step) => step is Quadratic q ? page.Sentence(StepWords.Write(Compare.Equal(q.For, q.Named))) : [];

    /// <summary>What is reached, unless the reason alone says it: a count, or a formula that does not fit in a line.</summary>
    private Items<Inline> Test(Deduction test)
    {
        Items<Inline> says = page.Speaker.Say(test.Says);
        bool isPlain = test.Says is not HowMany && !says.OfType<MathRun>().Any(m => MathTex.IsTall(m.Is));
        return [.. Sentence.Of(isPlain ? [.. says, new WordRun(": "), .. page.Reason(test)] : page.Reason(test)), new WordRun(Tick)];
    }

    /// <summary>The letters whose answers the check leans on; its own letter where it leans on none.</summary>
    private string[] Tested(Section section)
    {
        HashSet<ClaimId> leant = [.. section.Passage.Steps.OfType<Calculation>().SelectMany(c => c.Bindings).Select(b => b.Is).OfType<ValueOf>().Select(v => v.Claim),
            .. section.Passage.Steps.OfType<Deduction>().SelectMany(d => d.Why.From)];
        string[] letters = [.. page.Solution.Parts.Where(p => p.Answers.SelectMany(a => a.Values).Any(v => leant.Contains(v.From))).Select(p => p.Letter).OfType<string>()];
        return letters.Length > 0 ? letters : section.Part.Letter is { } own ? [own] : [];
    }
}
