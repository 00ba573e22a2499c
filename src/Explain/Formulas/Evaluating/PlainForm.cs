using Fractions;

namespace Explain;

/// <summary>
/// Takes the units out of a formula: numbers remain, with exact factors where units differ. Units are calculated (m × m is m²),
/// sums need one kind and take the unit of their first operand, angles are numbers of degrees under a function.
/// Equal subtrees become one object.
/// </summary>
internal sealed class PlainForm(Interner interner, Func<Symbol, Unit> unitOf)
{
    private readonly Dictionary<Expr, Plain> done = new(ReferenceEqualityComparer.Instance);

    /// <exception cref="ArgumentException">Kinds do not go together, or the formula is not closed.</exception>
    public Plain Of(Expr expr) => done.TryGetValue(expr, out Plain known) ? known : done[expr] = Make(expr);

    private Plain Make(Expr expr) => expr switch
    {
        Quantity(var amount, var unit) => new(Keep(new Quantity(amount, Unit.None)), Scale.Of(unit)),
        SymbolUse(var symbol) => new(Keep(expr), Scale.Of(unitOf(symbol))),
        Sum(var left, var right) => Added(Of(left), Of(right), (a, b) => new Sum(a, b)),
        Difference(var left, var right) => Added(Of(left), Of(right), (a, b) => new Difference(a, b)),
        Product(var left, var right) => Times(Of(left), Of(right)),
        Quotient(var left, var right) => Over(Of(left), Of(right)),
        Negative(var of) => Of(of) is var (number, scale) ? new(Keep(new Negative(number)), scale) : default,
        Power(var of, var exponent) => Of(of) is var (number, scale) ? new(Keep(new Power(number, exponent)), scale.ToThe(exponent)) : default,
        Root(var of) => Of(of) is var (number, scale) ? new(Keep(new Root(number)), scale.SquareRoot()) : default,
        Apply(var function, var to) => Applied(function, Of(to)),
        _ => throw new ArgumentException(expr.ToString(), nameof(expr)),
    };

    private Plain Added(Plain left, Plain right, Func<Expr, Expr, Expr> make) =>
        new(Keep(make(left.Number, Scaled(right.Number, right.Scale.FactorTo(left.Scale)))), left.Scale);

    private Plain Times(Plain left, Plain right)
    {
        (Scale scale, Fraction factor) = left.Scale.Times(right.Scale);
        return new(Scaled(Keep(new Product(left.Number, right.Number)), factor), scale);
    }

    private Plain Over(Plain left, Plain right)
    {
        (Scale scale, Fraction factor) = left.Scale.Times(right.Scale.ToThe(-1));
        return new(Scaled(Keep(new Quotient(left.Number, right.Number)), factor), scale);
    }

    private Plain Applied(Function function, Plain to)
    {
        bool inverse = function is Function.ArcSine or Function.ArcCosine or Function.ArcTangent;
        Expr argument = Scaled(to.Number, to.Scale.FactorTo(inverse ? Scale.None : Scale.Degree));
        return new(Keep(new Apply(function, argument)), inverse ? Scale.Degree : Scale.None);
    }

    private Expr Scaled(Expr number, Fraction factor) => factor == Fraction.One ? number
        : Keep(new Product(Keep(new Quantity(Exact.Of(factor), Unit.None)), number));

    private Expr Keep(Expr expr) => interner.Keep(expr);
}
