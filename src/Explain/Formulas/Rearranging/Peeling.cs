namespace Explain;

/// <summary>Undoes the outermost operation round a quantity that occurs once.</summary>
internal static class Peeling
{
    /// <summary>False when there is no move.</summary>
    public static bool Peel(Workings at)
    {
        if (!at.Left.Holds(at.Target) && !IsTakenAway(at))
        {
            at.Exchange();
            return true;
        }

        return (at.Left.Holds(at.Target) ? at.Left : at.Right) switch
        {
            Sum or Difference => FromSum(at),
            Product or Quotient or Negative => FromProduct(at),
            Power power => FromPower(at, power),
            Root(var under) => Do(at, MoveKind.Square, null, under, r => r is Root(var inner) ? inner : new Power(r, 2)),
            Apply apply => FromFunction(at, apply),
            _ => false,
        };
    }

    // What is taken away on the right comes to the left by adding it.
    private static bool IsTakenAway(Workings at) =>
        at.Right is Sum or Difference && Addends.Of(at.Right).Single(t => t.Of.Holds(at.Target)).IsNegative;

    private static bool FromSum(Workings at)
    {
        bool onLeft = at.Left.Holds(at.Target);
        Addend[] terms = [.. Addends.Of(onLeft ? at.Left : at.Right)];
        Addend own = terms.Single(t => t.Of.Holds(at.Target));
        Expr rest = Addends.Write(terms.Where(t => t != own));
        if (!own.IsNegative) return Do(at, MoveKind.Subtract, rest, own.Of, r => Addends.Minus(r, rest));
        if (at.Other is not null) return Do(at, MoveKind.Subtract, rest, new Negative(own.Of), r => Addends.Minus(r, rest));
        return onLeft
            ? Do(at, MoveKind.Add, own.Of, rest, r => Addends.Plus(r, own.Of))
            : Do(at, MoveKind.Add, own.Of, Addends.Plus(at.Left, own.Of), _ => rest);
    }

    private static bool FromProduct(Workings at)
    {
        Factors held = Factors.Of(at.Left);
        if (held.Under.Any(f => f.Holds(at.Target))) return FromDivisor(at, held);
        Factors divisor = held.Divisor;
        if (divisor != Factors.One)
        {
            Expr with = divisor.Write();
            return Do(at, MoveKind.Multiply, with, held.Times(divisor).Write(), r => Factors.Of(r).Times(divisor).Write());
        }

        Factors others = held with { Over = [.. held.Over.Where(f => !f.Holds(at.Target))] };
        Expr own = held.Over.Single(f => f.Holds(at.Target));
        return Do(at, others == Minus ? MoveKind.Multiply : MoveKind.Divide, others.Write(), own,
            r => others == Minus ? Addends.Minus(0, r) : Factors.Of(r).Times(others.Inverse).Write());
    }

    private static Factors Minus { get; } = Factors.One with { Number = Fractions.Fraction.MinusOne };

    private static bool FromDivisor(Workings at, Factors held)
    {
        Factors right = Factors.Of(at.Right);
        if (right.Divisor != Factors.One)
            return Do(at, MoveKind.Invert, null, held.Inverse.Write(), r => Factors.Of(r).Inverse.Write());
        Factors divisor = held.Divisor;
        return Do(at, MoveKind.Multiply, divisor.Write(), held.Times(divisor).Write(), r => Factors.Of(r).Times(divisor).Write());
    }

    private static bool FromPower(Workings at, Power power)
    {
        if (power.Exponent % 2 != 0) return false;
        Expr root = new Root(at.Right);
        return at.Move(MoveKind.Root, power.Exponent == 2 ? power.Base : new Power(power.Base, power.Exponent / 2), root, SecondValue.Negative, new Negative(root));
    }

    private static bool FromFunction(Workings at, Apply apply)
    {
        Function undo = apply.Function switch
        {
            Function.Sine => Function.ArcSine,
            Function.Cosine => Function.ArcCosine,
            Function.Tangent => Function.ArcTangent,
            Function.ArcSine => Function.Sine,
            Function.ArcCosine => Function.Cosine,
            _ => Function.Tangent,
        };
        Expr angle = new Apply(undo, at.Right);
        return apply.Function == Function.Sine
            ? at.Move(MoveKind.Inverse, apply.To, angle, SecondValue.Supplement, Expr.Degrees(180) - angle)
            : Do(at, MoveKind.Inverse, null, apply.To, r => new Apply(undo, r));
    }

    private static bool Do(Workings at, MoveKind kind, Expr? with, Expr left, Func<Expr, Expr> right)
    {
        at.Move(kind, with, left, right);
        return true;
    }
}
