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
        Speaker = new Speaker(table, style with { Lengths = WorkingUnit.Of(solution.Of), Exact = solution.Of.Round.Any(r => r.Rule.Exact), Fractions = AnswerRounding.WritesFractions(solution.Of) }, Claims, new Story(solution.Of));
        FirstFullValues = Steps.OfType<Calculation>().FirstOrDefault(EndsThoughCut)?.Id;
    }

    public Solution Solution { get; }

    public Detail Detail { get; }

    public Items<Section> Sections { get; }

    public StepNumbers Numbers { get; }

    public SolutionClaims Claims { get; }

    public Speaker Speaker { get; }

    /// <summary>The reason of a step, shorter where the page has used its rule before.</summary>
    public Items<Inline> Reason(Step step) => Speaker.Reason(step.Why, Numbers.IsAgain(step.Id));

    /// <summary>Whether a quantity is found from the givens alone that an earlier step has found from its results.</summary>
    public bool IsFoundAgain(Calculation calculation) => calculation.Bindings.All(b => b.Is is ValueOf of && Claims.Find(of.Claim) is Premise)
        && Steps.TakeWhile(s => s.Id != calculation.Id).OfType<Calculation>().Any(c => c.Target == calculation.Target);

    /// <summary>The measurements that this calculation is the first to use and that were typed in other units than the page works in.</summary>
    public IEnumerable<Given> Converted(Calculation calculation) => calculation.Bindings.Select(b => b.Is).OfType<ValueOf>().Select(v => v.Claim)
        .Where(id => !Steps.TakeWhile(s => s.Id != calculation.Id).OfType<Calculation>().SelectMany(c => c.Bindings).Any(b => b.Is == new ValueOf(id)))
        .Select(id => Claims.Find(id)).OfType<Premise>()
        .SelectMany(p => Solution.Of.Given.Where(g => p.Says == Compare.Equal(g.Of, g.Value)))
        .Where(g => !UnitsOf(MathReader.Read(g.Typed)).SequenceEqual(UnitsOf(Speaker.Math.Term(g.Value))));

    /// <summary>The first calculation whose value ends although numbers in it are cut, so that the digits shown do not give it.</summary>
    public ClaimId? FirstFullValues { get; }

    /// <summary>Every step in the order of the page.</summary>
    public IEnumerable<Step> Steps => Sections.SelectMany(s => s.Passage.Steps).SelectMany(Solution.Within);

    /// <summary>A phrase as a sentence.</summary>
    public Items<Inline> Sentence(Phrase phrase) => Explain.Sentence.Of(Speaker.Say(phrase));

    /// <summary>The remarks that the page prints.</summary>
    public IEnumerable<Block> Remarks(Items<Remark> remarks) =>
        Detail == Detail.Brief ? [] : remarks.Select(r => new RemarkBlock(Sentence(r.Says)));

    private bool EndsThoughCut(Calculation calculation) => IsWhole(calculation.Value)
        && calculation.Bindings.Any(b => b.Is is ValueOf of && Claims.ValueOf(of.Claim) is { IsGiven: false, Value: { } value } && !IsWhole(value) && !(Speaker.Style.Exact && value.Exact is not null));

    private static bool IsWhole(Value value) => value.Exact?.Rational is { } rational && Decimals.PlacesOf(rational) is not null;

    private static IEnumerable<Unit> UnitsOf(MathPiece piece) => piece switch
    {
        MathUnit unit => [unit.Is],
        MathRow row => row.Of.SelectMany(UnitsOf),
        _ => [],
    };
}
