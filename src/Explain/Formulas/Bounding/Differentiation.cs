using Fractions;

namespace Explain;

/// <summary>
/// The derivative of a formula without units by one of its symbols. Angles are numbers of degrees, so the derivative of a sine
/// is π/180 times the cosine. Parts without the symbol fall out, so that enclosures of the derivative stay narrow.
/// </summary>
internal sealed class Differentiation(Symbol by, Interner interner)
{
    private static readonly Expr Zero = 0;
    private static readonly Expr One = 1;
    private static readonly Expr PerDegree = Number(Exact.Divide(Exact.Pi, Exact.Of(180))!);
    private static readonly Expr Degrees = Number(Exact.Divide(Exact.Of(180), Exact.Pi)!);

    private readonly Dictionary<Expr, Expr> done = new(ReferenceEqualityComparer.Instance);

    public Expr Of(Expr expr) => done.TryGetValue(expr, out Expr? known) ? known : done[expr] = interner.KeepAll(Make(expr));

    private Expr Make(Expr expr) => expr switch
    {
        SymbolUse(var symbol) => symbol.Equals(by) ? One : Zero,
        Sum(var a, var b) => Plus(Of(a), Of(b)),
        Difference(var a, var b) => Minus(Of(a), Of(b)),
        Product(var a, var b) => Plus(Times(Of(a), b), Times(a, Of(b))),
        Quotient(var a, var b) => QuotientOf(a, b, expr),
        Power(var a, var n) => Times(Times(n, n == 2 ? a : new Power(a, n - 1)), Of(a)),
        Root(var a) => Over(Of(a), Times(2, expr)),
        Negative(var a) => Minus(Zero, Of(a)),
        Apply(var function, var a) => FunctionOf(function, a, expr),
        _ => Zero,
    };

    private Expr QuotientOf(Expr a, Expr b, Expr quotient)
    {
        (Expr top, Expr bottom) = (Of(a), Of(b));
        return IsZero(bottom) ? Over(top, b)
            : IsZero(top) ? Minus(Zero, Over(Times(quotient, bottom), b))
            : Over(Minus(Times(top, b), Times(a, bottom)), new Power(b, 2));
    }

    private Expr FunctionOf(Function function, Expr a, Expr value)
    {
        Expr inner = Of(a);
        return function switch
        {
            Function.Sine => Times(Times(PerDegree, new Apply(Function.Cosine, a)), inner),
            Function.Cosine => Minus(Zero, Times(Times(PerDegree, new Apply(Function.Sine, a)), inner)),
            Function.Tangent => Times(Times(PerDegree, One + new Power(value, 2)), inner),
            Function.ArcSine => Over(Times(Degrees, inner), new Root(One - new Power(a, 2))),
            Function.ArcCosine => Minus(Zero, Over(Times(Degrees, inner), new Root(One - new Power(a, 2)))),
            _ => Over(Times(Degrees, inner), One + new Power(a, 2)),
        };
    }

    private static Expr Plus(Expr a, Expr b) => IsZero(a) ? b : IsZero(b) ? a : a + b;

    private static Expr Minus(Expr a, Expr b) => IsZero(b) ? a : IsZero(a) ? Negated(b) : a - b;

    private static Expr Times(Expr a, Expr b) => IsZero(a) || IsZero(b) ? Zero : a.Equals(One) ? b : b.Equals(One) ? a : a * b;

    private static Expr Over(Expr a, Expr b) => IsZero(a) ? Zero : a / b;

    private static Expr Negated(Expr a) => a is Negative(var inner) ? inner : -a;

    private static bool IsZero(Expr expr) => expr is Quantity { Amount.Sign: 0 };

    private static Expr Number(Exact value) => new Quantity(value, Unit.None);
}
