using Fractions;

namespace Explain;

/// <summary>
/// The working of one evaluation on formulas without units. What has an exact form is kept exact; for the rest
/// enclosures are made as narrow as a question needs. Each object is worked out once.
/// </summary>
internal sealed class Reckoner
{
    private const int Places = 15;

    private readonly Interner interner = new();
    private readonly Dictionary<Expr, Evaluation?> examined = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<Expr, Exact> exact = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<Expr, int?> signs = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<int, Dictionary<Expr, Enclosure?>> enclosures = [];

    public Plain Plain(Expr expr) => new PlainForm(interner, s => throw new ArgumentException(s.ToString(), nameof(expr))).Of(expr);

    public Expr Keep(Expr expr) => interner.Keep(expr);

    public Expr KeepAll(Expr expr) => interner.KeepAll(expr);

    public Expr Number(Fraction value) => Keep(new Quantity(Exact.Of(value), Unit.None));

    public Exact? ExactOf(Expr expr) => expr is Quantity(var amount, _) ? amount : exact.GetValueOrDefault(expr);

    /// <summary>Keeps what was proved of a part.</summary>
    public void Know(Expr expr, Exact form) => exact[expr] = form;

    /// <summary>Null when the formula has a value; its exact form is then known if there is one.</summary>
    public Evaluation? Examine(Expr expr)
    {
        foreach (Expr part in expr.Subtrees())
        {
            if (!examined.TryGetValue(part, out Evaluation? failure)) examined[part] = failure = Fault(part);
            if (failure is not null) return failure;
        }

        return null;
    }

    /// <summary>The sign of a formula that was examined; null when undecided.</summary>
    public int? Sign(Expr expr)
    {
        if (ExactOf(expr) is { } form) return form.Sign;
        if (signs.TryGetValue(expr, out int? known)) return known;
        int? sign = Enclose(expr, Enclosure.Ladder[0])?.Sign ?? ZeroTest.Sign(expr, this);
        if (sign == 0) exact[expr] = Exact.Zero;
        return signs[expr] = sign;
    }

    /// <summary>The value of a formula that was examined.</summary>
    public Evaluation Value(Expr expr, Unit unit)
    {
        if (ExactOf(expr) is { } form) return new Evaluated(Explain.Value.Of(form, unit));
        foreach (int bits in Enclosure.Ladder)
        {
            if (Enclose(expr, bits) is not { } enclosure) continue;
            if (ShortForm(expr, enclosure) is { } found) return new Evaluated(Explain.Value.Of(found, unit));
            if (Decimals.CandidateIn(enclosure, Places) is null) return new Evaluated(new Value(null, enclosure, unit));
        }

        return new Undecided();
    }

    /// <summary>The formula's value as narrow as this many binary places allow; null where they do not keep it in its domain.</summary>
    public Enclosure? Enclose(Expr expr, int bits)
    {
        if (!enclosures.TryGetValue(bits, out Dictionary<Expr, Enclosure?>? known)) enclosures[bits] = known = new(ReferenceEqualityComparer.Instance);
        if (known.TryGetValue(expr, out Enclosure? value)) return value;
        return known[expr] = ExactOf(expr) is { } form ? form.Enclose(bits) : Calculated(expr, bits);
    }

    private Enclosure? Calculated(Expr expr, int bits)
    {
        Items<Expr> parts = Parts.Of(expr);
        Enclosure[] values = new Enclosure[parts.Count];
        for (int i = 0; i < parts.Count; i++)
        {
            if (Enclose(parts[i], bits) is not { } value) return null;
            values[i] = Enclosing.Clamped(expr, value);
        }

        return Enclosing.Of(expr, values);
    }

    private Evaluation? Fault(Expr expr)
    {
        if (Guard.Of(expr, this) is { } fault) return fault;
        if (ExactForm.Of(expr, ExactOf) is { } form) exact[expr] = form;
        return null;
    }

    /// <summary>A decimal, or the root of one, that the enclosure suggests and that is proved.</summary>
    private Exact? ShortForm(Expr expr, Enclosure enclosure)
    {
        if (Decimals.CandidateIn(enclosure, Places) is { } candidate && IsZero(expr, Exact.Of(candidate))) return exact[expr] = Exact.Of(candidate);
        Fraction? square = Decimals.CandidateIn(enclosure * enclosure, Places);
        return square is { IsPositive: true } && Exact.Root(Exact.Of(square.Value)) is { } root
            && (enclosure.Sign == -1 ? root.Negate() : root) is var signed && IsZero(expr, signed) ? exact[expr] = signed : null;
    }

    private bool IsZero(Expr expr, Exact candidate)
    {
        Expr difference = Keep(new Difference(expr, Keep(new Quantity(candidate, Unit.None))));
        return Examine(difference) is null && Sign(difference) == 0;
    }
}
