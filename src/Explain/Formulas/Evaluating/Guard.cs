using Fractions;

namespace Explain;

/// <summary>Whether a part of a formula has a value when its own parts have one. What turns out to be exactly on the border is kept as exact.</summary>
internal static class Guard
{
    public static Evaluation? Of(Expr expr, Reckoner reckoner) => expr switch
    {
        Quotient(_, var divisor) => Unless(reckoner.Sign(divisor), s => s != 0, expr),
        Root(var of) => Unless(reckoner.Sign(of), s => s >= 0, expr),
        Apply(Function.ArcSine or Function.ArcCosine, var ratio) => AtMostOne(ratio, 1, expr, reckoner) ?? AtMostOne(ratio, -1, expr, reckoner),
        Apply(Function.Tangent, var angle) => Tangent(angle, expr, reckoner),
        _ => null,
    };

    private static Evaluation? Unless(int? sign, Func<int, bool> inside, Expr expr) =>
        sign is not { } known ? new Undecided() : inside(known) ? null : new OutsideDomain(expr);

    private static Evaluation? AtMostOne(Expr ratio, int end, Expr expr, Reckoner reckoner)
    {
        int? sign = Beside(ratio, end, reckoner);
        if (sign == 0) reckoner.Know(ratio, Exact.Of(end));
        return Unless(sign * -end, s => s >= 0, expr);
    }

    // An angle that is not rational has a tangent unless it is proved to be 90° and half turns.
    private static Evaluation? Tangent(Expr angle, Expr expr, Reckoner reckoner)
    {
        if (reckoner.Enclose(angle, Enclosure.Ladder[0]) is not { } near) return new Undecided();
        Fraction turns = new(Whole.Floor((near.High - 90) / 180));
        Fraction right = 90 + 180 * turns;
        return near.Contains(right) ? Unless(Beside(angle, right, reckoner), s => s != 0, expr) : null;
    }

    private static int? Beside(Expr expr, Fraction value, Reckoner reckoner)
    {
        Expr difference = reckoner.Keep(new Difference(expr, reckoner.Number(value)));
        return reckoner.Examine(difference) is null ? reckoner.Sign(difference) : null;
    }
}
