using Fractions;

namespace Explain;

/// <summary>A number and rational multiples of letters or other quantities, each with its unit: 4x + 60, or 2x° + y.</summary>
internal sealed class Affine
{
    /// <summary>Under this key stands the number without a letter.</summary>
    private static readonly Expr One = 1;

    private readonly List<(Expr Of, Fraction Times, Unit Unit)> terms;

    private Affine(List<(Expr, Fraction, Unit)> terms) => this.terms = terms;

    /// <summary>Null when the formula has another form.</summary>
    public static Affine? Of(Expr expr) => expr switch
    {
        Quantity(var amount, var unit) when amount.Rational is { } number => Term(One, number, unit),
        SymbolUse or ValueOf => Term(expr, Fraction.One, Unit.None),
        Sum(var a, var b) => Plus(Of(a), Of(b)),
        Difference(var a, var b) => Plus(Of(a), Times(Of(b), Fraction.MinusOne, Unit.None)),
        Negative(var a) => Times(Of(a), Fraction.MinusOne, Unit.None),
        Product(var a, var b) when Number(Of(a)) is var (number, unit) => Times(Of(b), number, unit),
        Product(var a, var b) when Number(Of(b)) is var (number, unit) => Times(Of(a), number, unit),
        Quotient(var a, var b) when Number(Of(b)) is ({ IsZero: false } number, { Power: 0 }) => Times(Of(a), number.Reciprocal(), Unit.None),
        _ => null,
    };

    /// <summary>The number without a letter.</summary>
    public Fraction Alone => Coefficient(One);

    public Fraction Coefficient(Expr letter) => terms.FirstOrDefault(t => t.Of.Equals(letter)).Times;

    /// <summary>Part of the sum.</summary>
    public Affine Where(Func<Expr, bool> keep) => new([.. terms.Where(t => keep(t.Of))]);

    public bool IsZero => terms.Count == 0;

    public Affine Times(Fraction factor) => new([.. terms.Select(t => (t.Of, (t.Times * factor).Reduce(), t.Unit)).Where(t => !t.Item2.IsZero)]);

    public Affine Plus(Affine other) => new([.. Collected(terms.Concat(other.terms))]);

    /// <summary>The one unit of all terms, which an equation can do without; none when they differ.</summary>
    public Unit CommonUnit => terms.Count > 0 && terms.All(t => t.Unit == terms[0].Unit) ? terms[0].Unit : Unit.None;

    public Affine Without(Unit unit) => new([.. terms.Select(t => (t.Of, t.Times, t.Unit == unit ? Unit.None : t.Unit))]);

    /// <summary>Letters first, the number last.</summary>
    public Expr Write() => Addends.Write(terms.OrderBy(t => t.Of.Equals(One)).Select(t => new Addend(Written(t.Of, Fraction.Abs(t.Times), t.Unit), t.Times.IsNegative)));

    private static Expr Written(Expr of, Fraction times, Unit unit)
    {
        Expr number = new Quantity(Exact.Of(times), unit);
        return of.Equals(One) ? number : times == Fraction.One && unit == Unit.None ? of : number * of;
    }

    private static Affine Term(Expr of, Fraction times, Unit unit) => new(times.IsZero ? [] : [(of, times.Reduce(), unit)]);

    private static Affine? Plus(Affine? first, Affine? second) => first is null || second is null ? null : first.Plus(second);

    private static Affine? Times(Affine? sum, Fraction factor, Unit unit) => sum is null ? null
        : sum.terms.Any(t => t.Unit.Times(unit) is null) ? null
        : new Affine([.. sum.terms.Select(t => (t.Of, t.Times, t.Unit.Times(unit)!))]).Times(factor);

    private static (Fraction Number, Unit Unit)? Number(Affine? sum) => sum is not { terms: [var (of, times, unit)] } ? null
        : of.Equals(One) ? (times, unit) : null;

    private static IEnumerable<(Expr, Fraction, Unit)> Collected(IEnumerable<(Expr Of, Fraction Times, Unit Unit)> terms) => terms
        .GroupBy(t => (t.Of, t.Unit))
        .Select(g => (g.Key.Of, g.Aggregate(Fraction.Zero, (sum, t) => sum + t.Times).Reduce(), g.Key.Unit))
        .Where(t => !t.Item2.IsZero);
}
