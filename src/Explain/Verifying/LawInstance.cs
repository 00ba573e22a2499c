using Fractions;

namespace Explain;

/// <summary>Whether a formula for one quantity follows from a law: put in the law it makes both sides equal at drawn values.</summary>
internal static class LawInstance
{
    private const int Draws = 40, Wanted = 3, Points = 5, Bits = 192;

    public static bool Gives(Equation law, Symbol target, Expr formula)
    {
        Equation? put = Put(law, target, formula);
        if (put is null) return false;
        HashSet<Symbol> open = [.. Put(law, target, 1)!.Left.Symbols(), .. Put(law, target, 1)!.Right.Symbols()];
        return open.SetEquals(formula.Symbols()) && !open.Contains(target) && Agree(put);
    }

    public static bool Agree(Equation equation)
    {
        Symbol[] symbols = [.. equation.Left.Symbols(), .. equation.Right.Symbols()];
        int agreed = 0;
        for (int draw = 1; draw <= Draws && agreed < Wanted; draw++)
        {
            Dictionary<Symbol, Expr> values = Drawn([.. symbols.Distinct()], draw);
            Expr Closed(Expr side) => side.Substitute(e => e is SymbolUse use ? values[use.Symbol] : null);
            if (Agreement.Number(new Quotient(Closed(equation.Left), Closed(equation.Right)), Bits) is not { } quotient) continue;
            if (!Agreement.Of(quotient, Enclosure.Of(Fraction.One, Bits))) return false;
            agreed++;
        }

        return agreed == Wanted;
    }

    /// <summary>Whether the difference of the two sides is a multiple of x² + bx + c, which b and c do not depend on, at drawn values.</summary>
    public static bool IsMultiple(Equation law, Symbol x, Expr b, Expr c)
    {
        Symbol[] others = [.. law.Left.Symbols().Concat(law.Right.Symbols()).Distinct().Where(s => s != x)];
        if (others.Length == 0 || b.Symbols().Concat(c.Symbols()).Any(s => !others.Contains(s))) return false;
        Expr at = new SymbolUse(x), quotient = (law.Left - law.Right) / (new Power(at, 2) + b * at + c);
        return Enumerable.Range(1, Wanted).All(draw =>
        {
            Dictionary<Symbol, Expr> values = Drawn(others, draw);
            Enclosure?[] found = [.. Enumerable.Range(1, Points).Select(i => Agreement.Number(quotient.Substitute(e => e is SymbolUse use ? use.Symbol == x ? new Quantity(Exact.Of(17 * i), Unit.Metre) : values[use.Symbol] : null), Bits))];
            return found.All(f => f is { } value && Agreement.Of(value, found[0]!.Value));
        });
    }

    /// <summary>The law with the formula for the target; null when the law does not hold the target.</summary>
    public static Equation? Put(Equation law, Symbol target, Expr formula)
    {
        Expr use = new SymbolUse(target);
        if (target is Ratio ratio && !law.Left.Holds(use) && !law.Right.Holds(use)) use = new Apply(ratio.Function, new SymbolUse(ratio.Of));
        if (!law.Left.Holds(use) && !law.Right.Holds(use)) return null;
        return new(law.Left.Substitute(e => e.Equals(use) ? formula : null), law.Right.Substitute(e => e.Equals(use) ? formula : null));
    }

    /// <summary>Multiples of an odd number modulo a prime: the draws repeat in every run and no two symbols are alike.</summary>
    private static Dictionary<Symbol, Expr> Drawn(Symbol[] symbols, int draw)
    {
        Dictionary<Symbol, Expr> values = [];
        for (int i = 0; i < symbols.Length; i++)
        {
            Fraction share = new(((draw * 7919) + ((i + 1) * draw * 3571) + (i * 617)) % 997, 997);
            values[symbols[i]] = symbols[i] switch
            {
                Angle or Bearing => new Quantity(Exact.Of(25 + 60 * share), Unit.Degree),
                Ratio => new Quantity(Exact.Of(new Fraction(1, 5) + share / 2), Unit.None),
                Measure { Kind: MeasureKind.Area } => new Quantity(Exact.Of(4 + 5 * share), Unit.Metre.To(2)),
                _ => new Quantity(Exact.Of(4 + 5 * share), Unit.Metre),
            };
        }

        return values;
    }
}
