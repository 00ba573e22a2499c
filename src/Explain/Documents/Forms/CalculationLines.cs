namespace Explain;

/// <summary>The formulas of a calculation: the rule in this figure, then formula, substitution, value with its unit.</summary>
internal sealed class CalculationLines(Page page)
{
    private const double WidestFormula = 60;

    private readonly Speaker speaker = page.Speaker;

    /// <summary>The lines at the first use of a rule: the law, so the formula; then the numbers.</summary>
    public Items<MathPiece> Full(Calculation calculation)
    {
        Compare formula = Compare.Equal(calculation.Target, calculation.Formula);
        if (IsCopy(calculation) || calculation.Law.All(l => l == formula)) return [Chain(calculation)];
        MathPiece[] laws = [.. calculation.Law.Select(speaker.Math.Compare)];
        return [.. laws[..^1], So(laws[^1], speaker.Math.Compare(formula)), Noted(calculation, [Target(calculation), .. Terms(calculation)])];
    }

    /// <summary>Measurements that were typed in other units than they are put in, each where the page first uses it: AB = 5 ft 3 in = 63 in.</summary>
    public Items<MathPiece> Conversions(Calculation calculation) =>
        [.. page.Converted(calculation).Select(g => MathBuilder.Chain([speaker.Math.Symbol(g.Of), MathReader.Read(g.Typed), speaker.Math.Term(g.Value)]))];

    /// <summary>All in one line: target = formula = substitution = value.</summary>
    /// <summary>Whether a formula made of earlier steps is wider than a page: then its value is shown and the steps stand for it.</summary>
    public bool IsTooWide(Calculation calculation) => calculation.Why.Rule.Name == "earlier-steps" && MathWidth.Of(Formula(calculation)) > WidestFormula;

    public MathPiece Chain(Calculation calculation) => IsTooWide(calculation) ? MathBuilder.Chain([Target(calculation), Value(calculation)]) : Noted(calculation,
        [Target(calculation), .. UndoesRatio(calculation) || calculation.Formula is Quantity ? [] : (MathPiece[])[Formula(calculation)], .. Terms(calculation)]);

    /// <summary>Substitution = value.</summary>
    public MathPiece Numbers(Calculation calculation) => MathBuilder.Chain(Terms(calculation));

    /// <summary>The same where an earlier calculation's formula stands in it, by that one's value.</summary>
    public MathPiece Numbers(Calculation calculation, Calculation by) => MathBuilder.Chain(
        [speaker.Math.Formula(SolutionClaims.Bound(calculation with { Formula = calculation.Formula.Substitute(e => e.Equals(by.Formula) ? new ValueOf(by.Id) : null) })), Value(calculation)]);

    public MathPiece Target(Calculation calculation) => speaker.Math.Side(calculation.Target);

    public MathPiece Formula(Calculation calculation) => speaker.Math.Formula(calculation.Formula);

    public MathPiece Substitution(Calculation calculation) => speaker.Math.Formula(SolutionClaims.Bound(calculation));

    public MathPiece Value(Calculation calculation) => ThreeFigures.Of(calculation.Target, speaker.Math.Value(calculation.Value));

    private IEnumerable<MathPiece> Terms(Calculation calculation)
    {
        Expr bound = SolutionClaims.Bound(calculation);
        if (!IsCopy(calculation)) yield return speaker.Math.Formula(bound);
        if (bound.Subtrees().Count(IsFunction) >= Least) yield return speaker.Math.Formula(bound, FunctionValue);
        yield return Value(calculation);
    }

    /// <summary>How many functions a formula must hold for their values to be shown.</summary>
    private int Least => page.Detail switch
    {
        Detail.Brief => int.MaxValue,
        Detail.Full => 1,
        _ => 2,
    };

    /// <summary>The chain; at the first sum of cut values whose shown digits do not add up, with a note that the values do.</summary>
    private MathPiece Noted(Calculation calculation, IEnumerable<MathPiece> terms) => MathBuilder.Chain(terms) is var chain && page.FirstFullValues == calculation.Id
        ? new MathRow([.. Of(chain), new MathWords(" (" + Word(StepWords.FullValues()) + ")")], MathLevel.Relation) : chain;

    private MathPiece? FunctionValue(Expr part) => IsFunction(part) && page.Claims.Evaluate(part) is { } value ? speaker.Math.Number(value) : null;

    private MathRow So(MathPiece law, MathPiece formula) => new([.. Of(law), new MathJoin(Word(StepWords.So())), .. Of(formula)], MathLevel.Relation);

    private string Word(Phrase phrase) => string.Concat(speaker.Say(phrase).OfType<WordRun>().Select(w => w.Text));

    private static Items<MathPiece> Of(MathPiece piece) => piece is MathRow row ? row.Of : [piece];

    /// <summary>Whether the value is another quantity's, or a number of the rule, so that there is nothing to put in.</summary>
    private static bool IsCopy(Calculation calculation) => calculation.Formula is SymbolUse or Quantity;

    private static bool IsFunction(Expr part) => part is Apply { Function: Function.Sine or Function.Cosine or Function.Tangent };

    /// <summary>Whether the formula is an inverse of a sine that is itself a quantity: sin⁻¹ sin ABC says nothing.</summary>
    private static bool UndoesRatio(Calculation calculation) => calculation.Formula.Subtrees().Any(p => p is Apply { To: SymbolUse { Symbol: Ratio } });
}
