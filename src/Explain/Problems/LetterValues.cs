namespace Explain;

/// <summary>Puts numbers in place of letters.</summary>
internal static class LetterValues
{
    /// <summary>The problem with its measurements in numbers, as far as the letters are known.</summary>
    public static Problem Put(this Problem problem, IReadOnlyDictionary<Symbol, Expr> letters) => letters.Count == 0 ? problem
        : problem with { Given = [.. problem.Given.Select(g => g with { Value = Put(g.Value, letters) })] };

    /// <summary>A number with its unit where every letter is known; otherwise the expression with what is known put in.</summary>
    private static Expr Put(Expr value, IReadOnlyDictionary<Symbol, Expr> letters)
    {
        Expr put = value.Substitute(e => e is SymbolUse use ? letters.GetValueOrDefault(use.Symbol) : null);
        return put is not Quantity && put.Symbols().Count == 0 && Evaluator.Evaluate(put) is Evaluated { Value: { Exact: { } exact, Unit: var unit } } ? new Quantity(exact, unit) : put;
    }
}
