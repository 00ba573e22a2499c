namespace Explain;

/// <summary>
/// A formula rewritten until no inverse function and no angle but rational numbers of degrees is left:roots,
/// exact forms, sines and cosines.
/// </summary>
internal sealed class AlgebraicForm(Reckoner reckoner)
{
    private readonly Dictionary<Expr, Expr?> done = new(ReferenceEqualityComparer.Instance);

    /// <summary>Null when the formula cannot be written so.</summary>
    public Expr? Of(Expr expr) => done.TryGetValue(expr, out Expr? known) ? known : done[expr] = Make(expr);

    /// <summary>The sine of an angle.</summary>
    public Expr? SineOf(AngleSum angle) => SineAndCosine.Of(angle, Of)?.Sine;

    private Expr? Make(Expr expr) => expr is Apply(var function, var angle) && Applied(function, angle) is { } applied ? applied
        : reckoner.ExactOf(expr) is { } form ? new Quantity(form, Unit.None)
        : expr is Apply ? null : Rebuilt(expr);

    private Expr? Rebuilt(Expr expr)
    {
        Expr?[] parts = [.. Parts.Of(expr).Select(Of)];
        return parts.Length == 0 || parts.Contains(null) ? null : Parts.With(expr, [.. parts.OfType<Expr>()]);
    }

    private Expr? Applied(Function function, Expr angle)
    {
        bool inverse = function is Function.ArcSine or Function.ArcCosine or Function.ArcTangent;
        if (inverse || AngleSum.Of(angle, reckoner) is not { } sum || SineAndCosine.Of(sum, Of) is not { } pair) return null;
        return function switch
        {
            Function.Sine => pair.Sine,
            Function.Cosine => pair.Cosine,
            _ => pair.Sine / pair.Cosine,
        };
    }
}
