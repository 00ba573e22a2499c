using Fractions;

namespace Explain;

/// <summary>
/// The formulas of claims over the values that the givens may have: one point, or a box where some have a range. What is asked is
/// answered for all of it.
/// </summary>
internal sealed class Terrain
{
    private readonly Closing closing = new();
    private readonly HashSet<ClaimId> claims = [];
    private readonly Dictionary<ClaimId, Evaluation> extremes = [];
    private Items<BoxSide> box;

    /// <summary>A given from one value to another; null where they are no rational numbers, or the first is the greater.</summary>
    public static BoxSide? Range(ClaimId given, Expr low, Expr high)
    {
        if (Evaluator.Evaluate(low) is not Evaluated { Value: { Exact.Rational: { } least, Unit: var unit } } || Evaluator.Evaluate(high) is not Evaluated { Value: var to }) return null;
        return to.In(unit).Exact?.Rational is { } greatest && least <= greatest ? new(new Measurement(given), least, greatest, unit) : null;
    }

    public bool IsBox => box.Count > 0;

    public bool Has(ClaimId claim) => claims.Contains(claim);

    public void Put(ClaimId claim, Expr value)
    {
        claims.Add(claim);
        closing.Add(claim, value);
    }

    public void Put(ClaimId given, BoxSide range)
    {
        if (!range.IsPoint) box = box.With(range);
        Put(given, range.IsPoint ? new Quantity(Exact.Of(range.Low), range.Unit) : new SymbolUse(range.Of));
    }

    public Expr Close(Expr expr) => closing.Close(expr);

    /// <summary>The value of a claim, or its range of values; undecided while a letter is not known.</summary>
    public Evaluation Evaluate(ClaimId claim)
    {
        Items<Symbol> symbols = Close(new ValueOf(claim)).Symbols();
        if (symbols.Count == 0) return Evaluator.Evaluate(Close(new ValueOf(claim)));
        if (symbols.Any(s => s is not Measurement)) return new Undecided();
        return Bounds(new ValueOf(claim)) is Bounded { Least.Value: var least, Greatest.Value: var greatest }
            ? new Evaluated(new(null, Enclosure.Hull(least.True, greatest.In(least.Unit).True), least.Unit)) : Bounds(new ValueOf(claim));
    }

    /// <summary>The extremes of a formula; those of a claim's value are found once.</summary>
    public Evaluation Bounds(Expr expr) => expr is not ValueOf(var claim) ? Extremes.Of(Close(expr), box)
        : extremes.TryGetValue(claim, out Evaluation? known) ? known : extremes[claim] = Extremes.Of(Close(expr), box);

    /// <summary>Null where a formula rises, or falls, with a given all over the box, and otherwise what is wrong.</summary>
    public Break? Moves(Expr what, ClaimId with, bool increases) => Bounds(what) switch
    {
        Bounded bounded => bounded.Trends.Contains(new(new Measurement(with), increases ? Direction.Rises : Direction.Falls)) ? null : Break.StatementFails,
        OutsideDomain => Break.OutsideDomain,
        _ => Break.Undecided,
    };

    /// <summary>Null where a comparison holds everywhere, and otherwise what is wrong.</summary>
    public Break? Everywhere(Compare says, Break otherwise) => Links(says).Select(link => Signs(link.Difference) is not { } signs ? Break.Undecided
        : signs.All(s => Decide.Fits(link.Relation, s)) ? (Break?)null : otherwise).FirstOrDefault(b => b is not null);

    /// <summary>Null where a comparison holds nowhere, and otherwise what is wrong.</summary>
    public Break? Nowhere(Compare says, Break otherwise)
    {
        (Relation Relation, IEnumerable<int>? Signs)[] links = [.. Links(says).Select(l => (l.Relation, Signs(l.Difference)))];
        if (links.Any(l => l.Signs?.Any(s => Decide.Fits(l.Relation, s)) == false)) return null;
        return links.Any(l => l.Signs is null) ? Break.Undecided : otherwise;
    }

    /// <summary>
    /// Whether two formulas that rules make equal are so: by proof, or else in every digit worked out. In a box they are tried at its
    /// middle and at corners, for the rules have shown them equal everywhere.
    /// </summary>
    public bool Agree(Expr first, Expr second) => Places().All(p => Same(Close(first).Substitute(p), Close(second).Substitute(p)));

    private IEnumerable<(Relation Relation, Expr Difference)> Links(Compare says) =>
        says.Between.Select((relation, i) => (relation, Close(says.Terms[i]) - Close(says.Terms[i + 1])));

    /// <summary>The signs that a formula has; null where they cannot be decided.</summary>
    private IEnumerable<int>? Signs(Expr closed)
    {
        if (closed.Symbols().Count == 0) return Evaluator.Sign(closed) is { } sign ? [sign] : null;
        if (closed.Symbols().Any(s => s is not Measurement)) return null;
        if (Extremes.Sign(closed, box) is { } all) return [all];
        return Extremes.Of(closed, box) is Bounded bounded && Sign(bounded.Least) is { } least && Sign(bounded.Greatest) is { } greatest
            ? Enumerable.Range(least, greatest - least + 1) : null;
    }

    private static int? Sign(Extreme extreme) => extreme.Closed is { } closed ? Evaluator.Sign(closed) : extreme.Value.True.Sign;

    /// <summary>Each measurement at its middle, each at its greatest value, and one after the other at its least.</summary>
    private IEnumerable<Func<Expr, Expr?>> Places() => box.Select(low => At(s => s == low ? s.Low : s.High)).Append(At(s => s.High)).Append(At(s => s.Middle));

    private Func<Expr, Expr?> At(Func<BoxSide, Fraction> choose) => expr =>
        expr is SymbolUse(var symbol) && box.FirstOrDefault(s => s.Of.Equals(symbol)) is { } side ? new Quantity(Exact.Of(choose(side)), side.Unit) : null;

    private static bool Same(Expr first, Expr second) => Evaluator.Compare(first, second) is { } sign ? sign == 0
        : Evaluator.Evaluate(first) is Evaluated { Value: var one } && Evaluator.Evaluate(second) is Evaluated { Value: var other } && one.True.Overlaps(other.In(one.Unit).True);
}
