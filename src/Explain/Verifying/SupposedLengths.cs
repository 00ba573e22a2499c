using Fractions;

namespace Explain;

/// <summary>Whether a split supposes every length of one side, each in one case, and counts the triangles in each case as drawing them does.</summary>
internal sealed class SupposedLengths(Problem problem, IIndependentModel model, Seen here, RayNames rays, int bits)
{
    /// <summary>Where in a stretch of lengths a figure is drawn; in a stretch without end as multiples of its beginning.</summary>
    private static readonly Items<Fraction> Inside = [new(1, 64), new(1, 2), new(63, 64)], Beyond = [new(65, 64), 2, 50];

    public static bool IsSplit(Step step) => step is Split { Why.Rule.Name: "number-by-length" };

    /// <summary>Whether the cases leave no length out and none twice, for the side that the reason names.</summary>
    public bool AreAll(Split split)
    {
        if (split.Why.Roles is not [{ Is: Amount { Is: Angle angle } }, { Is: Amount { Is: Length other } }, { Is: Amount { Is: Length side } }] || split.Why.When.Count > 0) return false;
        Span[] spans = [.. Spans(split, side)];
        return IsOpposite(side, other, angle) && spans.Length == split.Cases.Count && split.Says == new AnyOf([.. split.Cases.Select(c => c.Assume)])
            && spans is [{ Low: null }, .., { High: null }] && spans.Zip(spans.Skip(1)).All(p => p.First.High is not null && p.First.High == p.Second.Low && p.First.HasHigh != p.Second.HasLow)
            && spans.All(IsStretch) && Rests(split, [angle, other, .. spans.SelectMany(s => new[] { s.Low, s.High }).OfType<SymbolUse>().Select(u => u.Symbol)]);
    }

    /// <summary>Whether this problem is the case that it is said to be.</summary>
    public bool IsThis(Split split, Case one)
    {
        Symbol side = Side(split)!;
        bool? within = problem.Given.FirstOrDefault(g => g.Of == side) is { } given && Span.Of(one.Assume, side) is { } span ? Contains(span, given.Value) : null;
        return one.End switch { CaseEnd.Holds => within == true, CaseEnd.NotThisProblem => within == false, _ => false };
    }

    /// <summary>Every figure that can be drawn with a few lengths that the case supposes, a group a length; null where they cannot be drawn.</summary>
    public Items<Items<Layout>>? Drawn(Split split, Case one)
    {
        if (Side(split) is not { } side || Span.Of(one.Assume, side) is not { } span || problem.Given.All(g => g.Of != side)) return null;
        Items<Layout>?[] drawn = [.. Samples(span).Select(l => model.Layouts(With(side, l), bits))];
        return drawn.Any(d => d is null) ? null : [.. drawn.Select(d => d!.Value)];
    }

    private static Symbol? Side(Split split) => Span.Parameter([.. split.Cases.Select(c => c.Assume)]);

    private static IEnumerable<Span> Spans(Split split, Symbol side) => split.Cases.Select(c => Span.Of(c.Assume, side)).OfType<Span>();

    private static bool IsOpposite(Length side, Length other, Angle angle) =>
        new Length(angle.First, angle.Second) == side && (other == new Length(angle.Vertex, angle.First) || other == new Length(angle.Vertex, angle.Second));

    private bool IsStretch(Span span) => span.IsPoint ? span is { HasLow: true, HasHigh: true } : span.Low is not { } low || span.High is not { } high || Sign(low, high) < 0;

    private bool Rests(Split split, HashSet<Symbol> on) => split.Why.From.Count == on.Count && on.Select(rays.Of).ToHashSet().SetEquals(here.Of(split.Why.From).Select(t => t.Of).OfType<Symbol>().Select(rays.Of));

    private bool? Contains(Span span, Expr value)
    {
        int? low = span.Low is null ? 1 : Sign(value, span.Low), high = span.High is null ? -1 : Sign(value, span.High);
        return low is null || high is null ? null : (span.HasLow ? low >= 0 : low > 0) && (span.HasHigh ? high <= 0 : high < 0);
    }

    private int? Sign(Expr first, Expr second) => Closed(first) is { } a && Closed(second) is { } b ? Agreement.Compare(a, b) : null;

    private Expr? Closed(Expr expr) => expr is SymbolUse use ? here.All.FirstOrDefault(t => t.Of == use.Symbol && t.Closed is not null)?.Closed : expr;

    private IEnumerable<Expr> Samples(Span span)
    {
        Expr low = span.Low is null ? new Quantity(Exact.Zero, Unit.Metre) : Closed(span.Low)!;
        if (span.IsPoint) return [low];
        Expr[] within = span.High is { } high ? [.. Inside.Select(k => low + new Quantity(Exact.Of(k), Unit.None) * (Closed(high)! - low))] : [.. Beyond.Select(k => new Quantity(Exact.Of(k), Unit.None) * low)];
        return [.. span.HasLow ? new[] { low } : [], .. within, .. span is { HasHigh: true, High: { } end } ? new[] { Closed(end)! } : []];
    }

    /// <summary>The problem with another length of the side, before acute or obtuse chooses.</summary>
    private Problem With(Symbol side, Expr length) => problem with
    {
        Given = [.. problem.Given.Select(g => g.Of == side ? g with { Value = length } : g)],
        Figure = [.. problem.Figure.Where(f => f.Says is not Place { Kind: PlaceKind.Acute or PlaceKind.Obtuse })],
    };
}
