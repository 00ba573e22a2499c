using Fractions;

namespace Explain;

/// <summary>Whether bounds follow: the formula from earlier steps, the direction of each measurement, the corners of the box.</summary>
internal sealed class BoundsChecks(Problem problem, IIndependentModel model, Seen seen, RayNames rays, int bits)
{
    public bool Holds(Step step) => (step.Why.Rule.Name, step) switch
    {
        ("as-a-multiple", Deduction { Says: Varies { Increases: true } varies } d) => step.Why.Roles is [{ Is: Amount { Is: var measured } }] && measured == varies.With
            && OneDirection(d, varies) && seen.Find(d.Why.From[0]) is { Claim: Calculation c } && Moving.IsMultiple(c.Formula, measured),
        ("link-by-link", Deduction { Says: Varies varies } d) => step.Why.Roles is [{ Is: Links links }] && OneDirection(d, varies)
            && seen.Find(d.Why.From[0]) is { Claim: Calculation c } && links.Are.All(l => l.Says.With == varies.With && c.Formula.Subtrees().Contains(l.Says.What) && Moves(l)),
        _ => step.Why.Roles.Count == 0 && Plainly(step),
    };

    private bool Plainly(Step step) => (step.Why.Rule.Name, step) switch
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

    /// <summary>Whether bounds are the extremes of a quantity, by the formula of a claim of that very quantity.</summary>
    public bool Are(Bounds bounds, Symbol wanted, Testimony from) => seen.All.Prepend(from)
        .Where(t => t is { Of: not null, Open: not null } && t.Figures == from.Figures && (rays.Of(t.Of) == rays.Of(wanted) || Wanted(t.Of) == wanted))
        .Any(t => Box(t.Open!) is { } box && Extremes.Of(t.Open!, box) is Bounded found && IsOne(found.Least.Value, bounds.Lower) && IsOne(found.Greatest.Value, bounds.Upper));

    private bool IsOne(Value first, Value second) => Agreement.Of(GivenNumbers.In(first, bits), GivenNumbers.In(second, bits));

    private bool FromEarlier(Calculation c) => seen.Of(c.Why.From).Any(t => t.Claim is Calculation && t.Of is { } of && rays.Of(of) == rays.Of(c.Target)
        && t.Open is { } open && LawInstance.Agree(new(rays.Of(open), rays.Of(c.Formula))));

    private bool OneDirection(Deduction d, Varies varies)
    {
        if (seen.Of(d.Why.From).ToArray() is not [{ Open: { } open, Of: { } of }, { Claim: Premise { Within: not null }, Of: { } with }]) return false;
        if (varies.What != new SymbolUse(of) || with != varies.With) return false;
        return Box(open) is { } box && Extremes.Of(open, box) is Bounded bounded
            && bounded.Trends.Any(t => t.With == with && t.Direction == (varies.Increases ? Direction.Rises : Direction.Falls));
    }

    /// <summary>The range of each measured quantity of a formula; null where one is not measured.</summary>
    public Items<BoxSide>? Box(Expr formula)
    {
        BoxSide?[] box = [.. formula.Symbols().Select(Side)];
        return box.Contains(null) ? null : [.. box.OfType<BoxSide>()];
    }

    /// <summary>Whether a part of a formula moves as the link says, and the angle of a ratio stays acute or obtuse as it says.</summary>
    private bool Moves(Link link)
    {
        if (Box(link.Says.What) is not { } box || Extremes.Of(link.Says.What, box) is not Bounded bounded) return false;
        if (!bounded.Trends.Any(t => t.With == link.Says.With && t.Direction == (link.Says.Increases ? Direction.Rises : Direction.Falls))) return false;
        int? quarter = link.Says.What is Apply { To: var angle } ? Extremes.Sign(Expr.Degrees(90) - angle, box) : null;
        return link.Kind switch { LinkKind.Acute => quarter == 1, LinkKind.Obtuse => quarter == -1, _ => true };
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
