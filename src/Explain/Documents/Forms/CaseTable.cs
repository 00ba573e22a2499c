namespace Explain;

/// <summary>Cases that take the same steps, as one table: a column each.</summary>
internal sealed class CaseTable(Page page, CalculationLines lines, PassageBlocks blocks)
{
    /// <param name="cases">The cases, each with its steps.</param>
    /// <param name="found">What was found in each before; its values open the table. Empty for none.</param>
    public StepBlock Of(Items<Case> cases, Items<Calculation> found)
    {
        Items<Step> first = cases[0].Steps;
        DisplayBlock[] formulas = [.. first.OfType<Calculation>().Where(c => IsTall(c) && IsAlike(cases, c)).Select(c => new DisplayBlock([page.Speaker.Math.Compare(Compare.Equal(c.Target, c.Formula))]))];
        return new(blocks.Number([.. first.Select(s => page.Numbers.Of(s.Id)).OfType<string>()]), first[0].Title is { } title ? page.Sentence(title) : page.Sentence(StepWords.EachCase()),
            Sentence.Join(Reasons(cases)), [.. formulas, Table(cases, found), .. first.SelectMany(s => page.Remarks(s.Remarks))]);
    }

    /// <summary>First triangle (B at B₁); case 1: angle ABC is acute.</summary>
    public Items<Inline> NameOf(Case one) => Sentence.Capital(page.Speaker.Say(one.Label?.Says ?? StepWords.Case(one.Name, one.Assume)));

    /// <summary>The reasons of the steps in their order, each once.</summary>
    private IEnumerable<Items<Inline>> Reasons(Items<Case> cases) =>
        Enumerable.Range(0, cases[0].Steps.Count).SelectMany(i => cases.Select(c => blocks.Reason(c.Steps[i]))).Distinct();

    private TableBlock Table(Items<Case> cases, Items<Calculation> found) => new(
        [[], .. cases.Select(NameOf)],
        [.. found.Count == 0 ? [] : Found(found), .. Enumerable.Range(0, cases[0].Steps.Count).SelectMany(i => Rows([.. cases.Select(c => c.Steps[i])]))]);

    private IEnumerable<Items<Items<Inline>>> Found(Items<Calculation> found)
    {
        Items<Inline> label = page.Speaker.Say(StepWords.From([found[0].Id], ""), ("says", Run(lines.Target(found[0]))));
        yield return [label, .. found.Select(c => Run(lines.Value(c)))];
    }

    private IEnumerable<Items<Items<Inline>>> Rows(Step[] steps)
    {
        if (steps is not [Calculation first, ..])
        {
            yield return [Label(steps[0], []), .. steps.Select(blocks.Says)];
            yield break;
        }

        Calculation[] all = [.. steps.Cast<Calculation>()];
        bool alike = all.All(c => c.Formula == first.Formula), tall = alike && IsTall(first);
        if (tall) yield return [Label(first, page.Speaker.Say(StepWords.Substitution())), .. all.Select(c => Run(lines.Substitution(c)))];
        yield return tall ? [Run(lines.Target(first)), .. all.Select(c => Run(lines.Value(c)))]
            : alike ? [Label(first, Run(page.Speaker.Math.Compare(Compare.Equal(first.Target, WithShared(all))))), .. all.Select(c => Run(lines.Value(c)))]
            : [Label(first, Run(lines.Target(first))), .. all.Select(c => Run(lines.Numbers(c)))];
    }

    /// <summary>The formula with the values that are the same in every case put in.</summary>
    private static Expr WithShared(Calculation[] all) => all[0].Formula.Substitute(e => e is SymbolUse use
        && all.Select(c => c.Bindings.First(b => b.Of == use.Symbol).Is).Distinct().ToArray() is [var one] ? one : null);

    private Items<Inline> Label(Step step, Items<Inline> text) => page.Numbers.Of(step.Id) is not { } number ? text
        : text.Count == 0 ? [new StepRun(number), new WordRun(".")] : [new StepRun(number), new WordRun(". "), .. text];

    private static bool IsAlike(Items<Case> cases, Calculation first) => cases.All(c => c.Steps.OfType<Calculation>().Any(s => s.Target == first.Target && s.Formula == first.Formula));

    private bool IsTall(Calculation calculation) => MathTex.IsTall(lines.Formula(calculation));

    private static Items<Inline> Run(MathPiece piece) => [new MathRun(piece)];
}
