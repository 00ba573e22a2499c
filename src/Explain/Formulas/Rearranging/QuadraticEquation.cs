using Fractions;

namespace Explain;

/// <summary>An equation written as x² + bx + c = 0 for one of its quantities x.</summary>
/// <param name="Linear">The formula of b in the other quantities.</param>
/// <param name="Constant">The formula of c.</param>
internal sealed record QuadraticEquation(Expr Linear, Expr Constant)
{
    /// <summary>Null when the equation is not quadratic in the quantity, its square has another coefficient than a number, or a term is missing.</summary>
    public static QuadraticEquation? Of(Equation equation, Symbol unknown)
    {
        Expr x = new SymbolUse(unknown);
        (Factors Others, int Degree)?[] terms = [.. Addends.Of(equation.Left).Concat(Addends.Of(equation.Right, isNegative: true)).Select(t => Split(t, x))];
        if (terms.Any(t => t is not { Degree: <= 2 })) return null;
        Factors[] squares = Where(terms, 2);
        if (terms.Select(t => t!.Value.Degree).Distinct().Count() < 3 || squares.Any(s => s.Over.Count + s.Under.Count > 0)) return null;
        Fraction leading = squares.Aggregate(Fraction.Zero, (sum, s) => sum + s.Number);
        return leading.IsZero ? null : new(Sum(Where(terms, 1), leading), Sum(Where(terms, 0), leading));
    }

    private static Factors[] Where((Factors Others, int Degree)?[] terms, int degree) => [.. terms.Where(t => t!.Value.Degree == degree).Select(t => t!.Value.Others)];

    private static Expr Sum(Factors[] terms, Fraction leading) => Addends.Write(terms.Select(t => t with { Number = (t.Number / leading).Reduce() })
        .Select(t => new Addend((t with { Number = Fraction.Abs(t.Number) }).Write(), t.Number.IsNegative)));

    /// <summary>A term as a power of the quantity and the rest; null where the quantity stands in it otherwise.</summary>
    private static (Factors Others, int Degree)? Split(Addend term, Expr x)
    {
        Factors all = Factors.Of(term.Of);
        int degree = all.Over.Sum(f => f.Equals(x) ? 1 : f is Power power && power.Base.Equals(x) ? power.Exponent : 0);
        Items<Expr> rest = [.. all.Over.Where(f => !f.Equals(x) && !(f is Power power && power.Base.Equals(x)))];
        if (rest.Concat(all.Under).Any(f => f.Holds(x))) return null;
        return (all with { Over = rest, Number = term.IsNegative ? -all.Number : all.Number }, degree);
    }
}
