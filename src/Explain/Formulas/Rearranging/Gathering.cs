namespace Explain;

/// <summary>Brings a quantity that occurs several times, each time as a factor of a term, together in one place.</summary>
internal static class Gathering
{
    /// <summary>False when the equation is not linear in the quantity.</summary>
    public static bool Gather(Workings at)
    {
        ClearDivisors(at);
        MultiplyOut(at);
        if (Own(at.Left, at.Target).Concat(Own(at.Right, at.Target)).Any(t => Coefficient(t, at.Target) is null)) return false;
        OnOneSide(at);
        return TakeOut(at);
    }

    private static void ClearDivisors(Workings at)
    {
        (Factors left, Factors right) = (Factors.Of(at.Left), Factors.Of(at.Right));
        if (!left.Under.Concat(right.Under).Any(f => f.Holds(at.Target))) return;
        Factors divisor = left.Divisor.Times(right.Divisor);
        at.Move(MoveKind.Multiply, divisor.Write(), left.Times(divisor).Write(), _ => right.Times(divisor).Write());
    }

    private static void MultiplyOut(Workings at)
    {
        (Expr left, Expr right) = (MultipliedOut(at.Left, at.Target), MultipliedOut(at.Right, at.Target));
        if (left.Equals(at.Left) && right.Equals(at.Right)) return;
        at.Move(MoveKind.Expand, null, left, _ => right);
    }

    private static Expr MultipliedOut(Expr sum, Expr target) => sum.Holds(target)
        ? Addends.Write(Addends.Of(sum).SelectMany(t => MultipliedOut(t, target)))
        : sum;

    private static IEnumerable<Addend> MultipliedOut(Addend term, Expr target)
    {
        Factors factors = Factors.Of(term.Of);
        Expr? bracket = factors.Over.FirstOrDefault(f => f is Sum or Difference && f.Holds(target));
        if (bracket is null) return [term];
        Factors rest = factors with { Over = [.. factors.Over.Where(f => !ReferenceEquals(f, bracket))] };
        return Addends.Of(bracket, term.IsNegative)
            .Select(inner => inner with { Of = rest.Times(Factors.Of(inner.Of)).Write() })
            .SelectMany(inner => MultipliedOut(inner, target));
    }

    // The quantity goes to the side away from the terms without it, so that no minus is needed there.
    private static void OnOneSide(Workings at)
    {
        if (!Own(at.Right, at.Target).Any()) return;
        if (Own(at.Left, at.Target).Any())
        {
            bool toRight = Rest(at.Right, at.Target).Length == 0;
            Expr moved = Addends.Write(Own(toRight ? at.Left : at.Right, at.Target));
            at.Move(MoveKind.Subtract, moved, Addends.Write(Less(at.Left, moved, toRight, at.Target)), r => Addends.Write(Less(r, moved, !toRight, at.Target)));
        }

        if (!Own(at.Left, at.Target).Any()) at.Exchange();
    }

    private static bool TakeOut(Workings at)
    {
        if (Rest(at.Left, at.Target) is { Length: > 0 } rest)
        {
            Expr moved = Addends.Write(rest);
            at.Move(MoveKind.Subtract, moved, Addends.Write(Own(at.Left, at.Target)), r => Addends.Minus(r, moved));
        }

        Expr coefficient = Addends.Write(Own(at.Left, at.Target).Select(t => t with { Of = Coefficient(t, at.Target)! }));
        if (coefficient is Quantity { Amount.Sign: 0 }) return false;
        Factors factored = Factors.Of(at.Target).Times(Factors.Of(coefficient));
        if (!at.Left.Equals(factored.Write())) at.Move(coefficient is Quantity ? MoveKind.Collect : MoveKind.Factor, null, factored.Write(), r => r);
        return at.IsSingle;
    }

    private static IEnumerable<Addend> Less(Expr side, Expr moved, bool standsHere, Expr target) => standsHere
        ? Rest(side, target)
        : Addends.Of(side).Concat(Addends.Of(moved, isNegative: true));

    private static IEnumerable<Addend> Own(Expr side, Expr target) => Addends.Of(side).Where(t => t.Of.Holds(target));

    private static Addend[] Rest(Expr side, Expr target) => [.. Addends.Of(side).Where(t => !t.Of.Holds(target))];

    private static Expr? Coefficient(Addend term, Expr target)
    {
        Factors factors = Factors.Of(term.Of);
        return factors.Over.Count(target.Equals) == 1 && factors.Over.Concat(factors.Under).Count(f => f.Holds(target)) == 1
            ? (factors with { Over = [.. factors.Over.Where(f => !f.Equals(target))] }).Write()
            : null;
    }
}
