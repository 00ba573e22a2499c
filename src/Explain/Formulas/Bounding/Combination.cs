using Fractions;

namespace Explain;

/// <summary>
/// Measurements that occur in a formula only in one sum, as A and B in c ÷ (2 sin(A + B)). To the search they are one measurement;
/// otherwise an extreme at A + B = 90° would be a whole line of places.
/// </summary>
internal sealed class Combination
{
    private readonly Affine sum;
    private readonly Items<BoxSide> parts;

    private Combination(Expr node, Affine sum, Items<BoxSide> parts)
    {
        (this.sum, this.parts) = (sum, parts);
        Fraction low = sum.Alone + Total(s => Times(s).IsPositive ? s.Low : s.High);
        Side = new(new Together(node), low, low + Total(s => Times(s).IsPositive ? s.Width : -s.Width), Unit.None);
    }

    /// <summary>The sum as one measurement.</summary>
    public BoxSide Side { get; }

    /// <summary>The largest such sum of a formula, and the formula with it as one measurement; null when there is none.</summary>
    public static (Combination Found, Expr Formula)? In(Expr formula, Items<BoxSide> sides)
    {
        foreach (Expr node in formula.Subtrees().Reverse().Where(n => n is Sum or Difference))
        {
            Items<Symbol> symbols = node.Symbols();
            if (symbols.Count < 2 || Affine.Of(node) is not { } sum || symbols.Any(s => sum.Coefficient(new SymbolUse(s)).IsZero)) continue;
            Combination combination = new(node, sum, [.. sides.Where(s => symbols.Contains(s.Of))]);
            Expr rest = formula.Substitute(n => ReferenceEquals(n, node) ? new SymbolUse(combination.Side.Of) : null);
            if (!rest.Symbols().Any(symbols.Contains)) return (combination, rest);
        }

        return null;
    }

    public Items<BoxSide> With(Items<BoxSide> sides) => [.. sides.Where(s => !parts.Contains(s)), Side];

    public IEnumerable<Trend> Separate(Trend trend) => !trend.With.Equals(Side.Of) ? [trend]
        : parts.Where(s => !s.IsPoint).Select(s => new Trend(s.Of, Times(s).IsPositive ? trend.Direction : Opposite(trend.Direction)));

    /// <summary>A place of the measurements, all the same part of the way through their ranges.</summary>
    public IEnumerable<Located> Separate(Located located) => !located.Of.Equals(Side.Of) ? [located] : parts.Select(s => new Located(s.Of, Part(s, located.At)));

    private Value Part(BoxSide side, Value whole)
    {
        if (side.IsPoint) return Value.Of(Exact.Of(side.Low), side.Unit);
        Fraction rate = (Times(side).IsPositive ? side.Width : -side.Width) / Side.Width;
        Fraction start = (Times(side).IsPositive ? side.Low : side.High) - Side.Low * rate;
        return whole.Exact?.Rational is { } exact ? Value.Of(Exact.Of(start + exact * rate), side.Unit)
            : new(null, whole.True * rate + Enclosure.Of(start, whole.True.Bits), side.Unit);
    }

    private Fraction Total(Func<BoxSide, Fraction> of) => parts.Aggregate(Fraction.Zero, (all, s) => all + Times(s) * of(s));

    private Fraction Times(BoxSide side) => sum.Coefficient(new SymbolUse(side.Of));

    private static Direction Opposite(Direction direction) => direction switch
    {
        Direction.Rises => Direction.Falls,
        Direction.Falls => Direction.Rises,
        _ => direction,
    };
}
