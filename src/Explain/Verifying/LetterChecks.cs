namespace Explain;

/// <summary>Checks of the steps that find a letter and put it in.</summary>
/// <param name="seen">What has been claimed before.</param>
/// <param name="rays">One name for each ray.</param>
internal sealed class LetterChecks(Seen seen, RayNames rays)
{
    /// <summary>The value of a letter that an algebra ends with; null when its lines do not all say the same of the letter.</summary>
    public static Expr? Value(Algebra a) => a.Lines is [{ Says: var first }, .., { Says: { Left: SymbolUse letter, Right: var value } }]
        && letter.Symbol == a.For && a.Start == Compare.Equal(first.Left, first.Right) && a.Says == Compare.Equal(letter, value) && a.Lines.All(l => HasOneRoot(l.Says, a.For, value)) ? value : null;

    /// <summary>Whether a premise that is an expression in letters is repeated with the letters put in.</summary>
    public bool PutsIn(Step step) => step is Calculation c && c.Why.Rule.Name == "put-in-the-letter" && c.Why.Roles.Count == 0 && c.Why.When.Count == 0
        && seen.Of(c.Why.From).ToArray() is [{ Claim: Premise { Says: Compare { Between: [Relation.Equal], Terms: [SymbolUse of, var said] } } }, .. var letters]
        && rays.Of(of.Symbol) == rays.Of(c.Target) && c.Formula == said
        && letters.Length > 0 && letters.All(l => l.Claim is Algebra) && letters.Select(l => l.Of!).ToHashSet().SetEquals(said.Symbols());

    /// <summary>Whether a step finds a letter or puts it in, so that no figure need be fixed for it.</summary>
    public static bool IsOfLetters(Step step) => step is Algebra || step.Why.Rule.Name == "put-in-the-letter";

    /// <summary>Whether an equation is linear in a letter, depends on it, and holds for the value: then it holds for no other.</summary>
    private static bool HasOneRoot(Equation equation, Symbol letter, Expr root)
    {
        if (root.Symbols().Count > 0 || Side(root) is not var (at, unit) || unit != Unit.None || equation.Left.Symbols().Concat(equation.Right.Symbols()).Any(s => s != letter)) return false;
        Fractions.Fraction?[] off = [.. new[] { 0, 1, 2 }.Select(step => Off(equation, at + step))];
        return off is [{ IsZero: true }, { IsZero: false } one, { } two] && two == one + one;
    }

    private static Fractions.Fraction? Off(Equation equation, Fractions.Fraction at)
    {
        Expr Put(Expr side) => side.Substitute(e => e is SymbolUse ? new Quantity(Exact.Of(at), Unit.None) : null);
        return Side(Put(equation.Left)) is { } left && Side(Put(equation.Right)) is { } right && left.Unit.SameKind(right.Unit)
            ? (left.Number - right.Number * right.Unit.FactorTo(left.Unit)).Reduce() : null;
    }

    private static (Fractions.Fraction Number, Unit Unit)? Side(Expr side) =>
        Evaluator.Evaluate(side) is Evaluated { Value: { Exact.Rational: { } number, Unit: var unit } } ? (number, unit) : null;
}
