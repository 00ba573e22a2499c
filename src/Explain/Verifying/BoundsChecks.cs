using Fractions;

namespace Explain;

/// <summary>Whether bounds follow: the formula from earlier steps, the direction of each measurement, the corners of the box.</summary>
internal sealed class BoundsChecks(Problem problem, IIndependentModel model, Seen seen, RayNames rays, int bits)
{
    public bool Holds(Step step) => step.Why.Roles.Count == 0 && (step.Why.Rule.Name, step) switch
    {
        ("earlier-steps", Calculation c) => FromEarlier(c),
        ("one-direction", Deduction { Says: Varies varies } d) => OneDirection(d, varies),
        ("ends-of-the-bounds", Series s) => Corners(s),
        _ => false,
    };

    public Testimony Testimony(Step step, Items<int> figures) => FormulaOf(step) is { } formula
        ? new(step, formula.Of, formula.Closed, figures) : new(step, null, null, figures);

    /// <summary>Whether the bounds are the results of the two rows.</summary>
    public static bool Ends(Series series, Bounds bounds, int bits) => series.Rows is [{ Cells: [.., Calculation greatest] }, { Cells: [.., Calculation least] }]
        && Agreement.Of(GivenNumbers.In(greatest.Value, bits), GivenNumbers.In(bounds.Upper, bits))
        && Agreement.Of(GivenNumbers.In(least.Value, bits), GivenNumbers.In(bounds.Lower, bits));

    private bool FromEarlier(Calculation c) => seen.Of(c.Why.From).Any(t => t.Claim is Calculation && t.Of is { } of && rays.Of(of) == rays.Of(c.Target)
        && t.Open is { } open && LawInstance.Agree(new(rays.Of(open), rays.Of(c.Formula))));

    private bool OneDirection(Deduction d, Varies varies)
    {
        if (seen.Of(d.Why.From).ToArray() is not [{ Open: { } open, Of: { } of }, { Claim: Premise { Within: not null }, Of: { } with }]) return false;
        if (varies.What != new SymbolUse(of) || with != varies.With) return false;
        BoxSide[] box = [.. open.Symbols().Select(Side).OfType<BoxSide>()];
        return box.Length == open.Symbols().Count && Extremes.Of(open, [.. box]) is Bounded bounded
            && bounded.Trends.Any(t => t.With == with && t.Direction == (varies.Increases ? Direction.Rises : Direction.Falls));
    }

    private BoxSide? Side(Symbol symbol)
    {
        if (seen.All.FirstOrDefault(t => t.Claim is Premise && t.Of == symbol) is not { Closed: { } middle, Claim: Premise premise }) return null;
        if (Evaluator.Evaluate(middle) is not Evaluated { Value: { Exact.Rational: { } at } value }) return null;
        Fraction within = premise.Within is { } w && Evaluator.Evaluate(w) is Evaluated { Value: var spread } ? spread.In(value.Unit).Exact!.Rational!.Value : Fraction.Zero;
        return new(symbol, at - within, at + within, value.Unit);
    }

    private bool Corners(Series series) => series.Rows.Count == 2 && FormulaOf(series) is { Claim: Calculation formula, Open: { } open }
        && Directions(series) is { Length: > 0 } directions && directions.Length == series.Why.From.Count
        && open.Symbols().Where(s => Side(s) is { IsPoint: false }).ToHashSet().SetEquals(directions.Select(d => d.With))
        && series.Rows.All(r => r.Cells.All(c => c is Calculation cell && IsCell(cell, series, r)))
        && Row(series.Rows[0], directions, formula, greatest: true) && Row(series.Rows[1], directions, formula, greatest: false);

    /// <summary>A cell has the reason of its series, and names only cells of its own row or claims already seen.</summary>
    private bool IsCell(Calculation cell, Series series, SeriesRow row) => cell.Why == series.Why && cell.Says == Compare.Equal(cell.Target, cell.Formula)
        && cell.Bindings.Select(b => b.Of).ToHashSet().SetEquals(cell.Formula.Symbols())
        && cell.Bindings.All(b => b.Is is ValueOf v && (row.Cells.TakeWhile(c => c != cell).FirstOrDefault(c => c.Id == v.Claim) is Calculation earlier
            ? earlier.Target == b.Of : seen.Find(v.Claim)?.Of is { } of && rays.Of(of) == rays.Of(b.Of) && Side(b.Of) is null or { IsPoint: true }));

    private Varies[] Directions(Step step) => [.. seen.Of(step.Why.From).Select(t => t.Claim.Says).OfType<Varies>()];

    private Testimony? FormulaOf(Step step)
    {
        Testimony?[] formulas = [.. seen.Of(step.Why.From).Select(t => t.Claim is Deduction { Says: Varies } d ? seen.Find(d.Why.From[0]) : null).Distinct()];
        return formulas is [{ } only] ? only : null;
    }

    private bool Row(SeriesRow row, Varies[] directions, Calculation formula, bool greatest)
    {
        if (row.Cells.Count != directions.Length + 1 || row.Cells[^1] is not Calculation last || last.Formula != formula.Formula || last.Target != formula.Target) return false;
        Dictionary<Symbol, Expr> corner = [];
        for (int i = 0; i < directions.Length; i++)
        {
            if (row.Cells[i] is not Calculation cell || cell.Target != directions[i].With || Side(cell.Target) is not { } side) return false;
            corner[cell.Target] = new Quantity(Exact.Of(greatest == directions[i].Increases ? side.High : side.Low), side.Unit);
            if (seen.Close(cell.Formula) is not { } closed || !Are(closed, corner[cell.Target]) || !Is(cell, corner[cell.Target])) return false;
        }

        // Drawn afresh with the measurements of the corner.
        Problem moved = problem with { Given = [.. problem.Given.Select(g => corner.TryGetValue(rays.Of(g.Of), out Expr? value) || corner.TryGetValue(g.Of, out value) ? g with { Value = value } : g)] };
        return model.Layouts(moved, bits) is { Count: > 0 } drawn && drawn.Any(l => l.Measure(Wanted(last.Target)) is { } found && Agreement.Of(found, GivenNumbers.In(last.Value, bits)));
    }

    /// <summary>A perpendicular that a step has drawn is measured as a distance, for the new figure has no foot.</summary>
    private Symbol Wanted(Symbol target) => target is Length l && seen.All.SelectMany(t => t.Parts).OfType<Place>()
        .FirstOrDefault(p => p is { Kind: PlaceKind.Foot, Of: [Point f, Point t, Line] } && l == new Length(f, t)) is { Of: [_, Point top, Line line] }
        ? new DistanceToLine(top, line) : target;

    private bool Are(Expr first, Expr second) => Agreement.Number(first, bits) is { } a && Agreement.Number(second, bits) is { } b && Agreement.Of(a, b);

    private bool Is(Calculation cell, Expr value) => Agreement.Number(value, bits) is { } own && Agreement.Of(own, GivenNumbers.In(cell.Value, bits));
}
