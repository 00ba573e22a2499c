namespace Explain;

/// <summary>
/// Follows one measurement through a formula from the inside outwards, as a teacher would: a larger angle has a larger
/// tangent, so the divisor is smaller. It gives up where two parts pull against each other.
/// </summary>
internal sealed class Tracing(Symbol with, Items<BoxSide> box)
{
    private readonly List<Link> links = [];

    /// <summary>The parts that move; null where they do not move the whole in the one direction that is known.</summary>
    public Items<Link>? Through(Expr formula, Direction known) => Sense(formula) == (known == Direction.Rises ? 1 : -1) ? [.. links] : null;

    /// <summary>1 where the formula rises with the measurement, −1 where it falls, 0 where it does not hold it.</summary>
    private int? Sense(Expr expr) => !expr.Symbols().Contains(with) ? 0 : expr switch
    {
        SymbolUse => 1,
        Sum(var a, var b) => Both(Sense(a), Sense(b)),
        Difference(var a, var b) => Both(Sense(a), -Sense(b)),
        Negative(var a) => -Sense(a),
        Root(var a) => Sense(a),
        Product(var a, var b) => Both(Scaled(Sense(a), b), Scaled(Sense(b), a)),
        Quotient(var a, var b) => Both(Scaled(Sense(a), b), Scaled(-Divisor(b), a)),
        Power(var a, var n) when n > 0 && Sign(a) > 0 => Sense(a),
        Apply(var function, var a) => Function(function, a, expr),
        _ => null,
    };

    private static int? Both(int? first, int? second) => first is null || second is null || first * second < 0 ? null : first == 0 ? second : first;

    private int? Scaled(int? sense, Expr by) => sense == 0 ? 0 : sense * Sign(by);

    /// <summary>The sign of a part over the whole box; null where it may be either.</summary>
    private int? Sign(Expr expr) => expr.Symbols().All(s => box.Any(b => b.Of.Equals(s))) ? Extremes.Sign(expr, box) : null;

    private int? Divisor(Expr divisor)
    {
        int? sense = Sense(divisor);
        if (sense is 1 or -1 && divisor is not (Apply or SymbolUse)) Add(divisor, sense.Value, LinkKind.Divisor);
        return sense;
    }

    private int? Function(Function function, Expr angle, Expr ratio)
    {
        if (Sense(angle) is not (1 or -1) || Sign(angle) != 1) return null;
        int sense = Sense(angle)!.Value, quarter = Sign(Expr.Degrees(90) - angle) ?? 0;
        if (quarter == 0 || Sign(Expr.Degrees(180) - angle) != 1) return null;
        int? moved = function switch
        {
            Explain.Function.Sine => sense * quarter,
            Explain.Function.Cosine => -sense,
            Explain.Function.Tangent => sense,
            _ => null,
        };
        if (moved is null) return null;
        if (angle is not SymbolUse) Add(angle, sense, LinkKind.Part);
        Add(ratio, moved.Value, quarter > 0 ? LinkKind.Acute : LinkKind.Obtuse);
        return moved;
    }

    private void Add(Expr part, int sense, LinkKind kind)
    {
        Link link = new(new Varies(part, with, sense > 0), kind);
        if (!links.Contains(link)) links.Add(link);
    }
}
