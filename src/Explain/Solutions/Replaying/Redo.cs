namespace Explain;

/// <summary>Works out one claim again and decides what it rests on.</summary>
internal sealed class Redo(Track track, Changed changes)
{
    /// <summary>Over what the changes make of the givens, and over what these may be where they were measured.</summary>
    private readonly Terrain here = new(), around = new();

    public void Begin(Premise premise)
    {
        Change? change = changes.Of(premise.Id);
        if (premise.Says is HowMany many && change is GivenIs { Value: var count } && Evaluator.Compare(count, many.Count) != 0) track.Break(premise.Id, Break.OtherShape);
        if (Stated.By(premise) is not { Of: var of, Is: var stated }) return;
        track.Gives(premise.Id, of);
        Expr value = change is GivenIs given ? given.Value : stated, zero = value - value;
        (Expr low, Expr high) = change is GivenWithin within ? (within.From, within.To) : (value, value);
        Put(here, low, high, zero);
        Put(around, low, high, premise.Within ?? zero);
        if (value.Symbols().Count == 0) Find(premise.Id, of, null, isFree: false);

        void Put(Terrain terrain, Expr from, Expr to, Expr margin)
        {
            if (ReferenceEquals(from, to) && ReferenceEquals(margin, zero)) terrain.Put(premise.Id, value);
            else if (Terrain.Range(premise.Id, from - margin, to + margin) is { } range) terrain.Put(premise.Id, range);
            else terrain.Put(premise.Id, value);
        }
    }

    /// <summary>What cannot be decided of the figure may hold.</summary>
    public void Need(Premise premise)
    {
        Break otherwise = premise.Says is Place ? Break.FigureFactFails : Break.StatementFails;
        if (!track.IsLost(premise.Id) && premise.Needs.Any(n => Stands(n) && here.Everywhere(n, otherwise) == otherwise)) track.Break(premise.Id, otherwise);
    }

    private bool Stands(Compare need) => !need.Terms.SelectMany(t => t.Claims()).Any(track.IsLost);

    /// <summary>Whether a step rests on a claim that does not stand; one whose value is given rests on none.</summary>
    public bool RestsOnLost(Step step) => changes.Of(step.Id) is not ValueIs && step.Why.From.Concat(Named(step)).Any(track.IsLost);

    private IEnumerable<ClaimId> Named(Step step) => step is Calculation c ? Bound(c).Claims() : [];

    /// <summary>Null where the comparisons that a use of a rule needs hold, and otherwise what is wrong.</summary>
    public Break? Compared(Step step, bool inCase)
    {
        Break otherwise = step switch
        {
            Deduction when inCase => Break.OtherCase,
            Deduction { Says: HowMany } => Break.OtherCase,
            Deduction { Says: Place } => Break.FigureFactFails,
            _ => Break.StatementFails,
        };
        return step.Why.From.Any(track.IsLost) ? null : step.Why.When.Select(w => here.Everywhere(w, otherwise)).FirstOrDefault(b => b is not null);
    }

    public void Step(Step step, bool isCell)
    {
        if (step is Calculation calculation) Reckon(calculation, isCell);
        if (step is Algebra algebra) Solve(algebra);
        if (step is Deduction deduction && new Saying(track, here, around).Fails(deduction) is { } why) track.Break(step.Id, why);
    }

    /// <summary>The coefficients and the roots; another number of roots is another equation to a reader.</summary>
    public void Roots(Quadratic q)
    {
        Reckon(q.Linear, isCell: true);
        Reckon(q.Constant, isCell: true);
        Compare discriminant = Compare.Of(new Power(new ValueOf(q.Linear.Id), 2), q.Roots.Count == 2 ? Relation.Greater : Relation.Equal, 4 * new ValueOf(q.Constant.Id));
        if (track.IsLost(q.Linear.Id) || track.IsLost(q.Constant.Id)) track.Lose(q);
        else if (here.Everywhere(discriminant, Break.OtherShape) is { } why)
        {
            track.Lose(q);
            track.Break(q.Id, why);
        }
        else foreach (Calculation root in q.Roots) Reckon(root, isCell: true, isRoot: true);
    }

    /// <summary>Null where a case is what it supposes, and otherwise what is wrong.</summary>
    public Break? Assumed(Case one) => one is { Assume: All all, End: CaseEnd.Holds }
        ? all.Of.Select(part => Assumed(one with { Assume = part })).FirstOrDefault(b => b is not null) : Compared(one);

    private Break? Compared(Case one)
    {
        if (one.Assume is not Compare assume || assume.Terms.SelectMany(t => t.Symbols()).Any(s => track.Giving(s, []) is null)) return null;
        HashSet<ClaimId> own = [.. one.Steps.Select(s => s.Id)];
        Compare resolved = assume with { Terms = [.. assume.Terms.Select(t => track.Resolved(t, []))] };
        bool holds = one.End == CaseEnd.Holds || resolved.Terms.SelectMany(t => t.Claims()).Any(own.Contains);
        return holds ? here.Everywhere(resolved, Break.OtherCase) : here.Nowhere(resolved, Break.OtherCase);
    }

    /// <summary>Null where bounds found by dividing the box are found so again, and otherwise what is wrong.</summary>
    public Break? Bounds(ClaimId claim, bool isShown, bool isAsked) => around.Bounds(new ValueOf(claim)) switch
    {
        Bounded bounded => isShown && bounded.IsMonotone ? Break.OtherShape : null,
        OutsideDomain when isAsked => Break.OutsideDomain,
        Undecided when isAsked => Break.Undecided,
        _ => null,
    };

    private void Reckon(Calculation c, bool isCell, bool isRoot = false)
    {
        Expr value = changes.Of(c.Id) is ValueIs own ? own.Number : Bound(c);
        if (value.Symbols().Count > 0 || !value.Claims().All(here.Has)) throw new ArgumentException(c.Id.Name, nameof(c));
        ClaimId? first = isCell || !changes.AreOfGivens ? null : track.Giving(c.Target, []);
        Put(c.Id, c.Target, _ => value);
        Find(c.Id, c.Target, c.Value.Unit, isFree: isRoot || changes.Of(c.Id) is not null, first);
    }

    /// <summary>The equation is solved again, whatever its lines were.</summary>
    private void Solve(Algebra a)
    {
        ValueIs? own = changes.Of(a.Id) as ValueIs;
        if (Put(a.Id, a.For, t => own?.Number ?? Solved(a, t))) Find(a.Id, a.For, null, isFree: own is not null);
        else track.Break(a.Id, Break.OutsideDomain);
    }

    private Expr? Solved(Algebra a, Terrain terrain)
    {
        Equation start = new(Lettered(terrain.Close(a.Start.Terms[0]), terrain), Lettered(terrain.Close(a.Start.Terms[1]), terrain));
        return (LinearEquation.Solve(start, a.For) ?? Isolate.For(start, a.For))?.Formula;
    }

    private bool Put(ClaimId claim, Symbol of, Func<Terrain, Expr?> value)
    {
        foreach (Terrain terrain in new[] { here, around })
        {
            if (value(terrain) is not { } found) return false;
            terrain.Put(claim, Lettered(terrain.Close(found), terrain));
        }

        track.Gives(claim, of);
        return true;
    }

    /// <param name="claim">The claim whose value is found.</param>
    /// <param name="of">Its quantity.</param>
    /// <param name="unit">The unit to give it in; null for that of the formula.</param>
    /// <param name="isFree">Whether the value is somebody's own and need not be one that the quantity can have.</param>
    /// <param name="first">The claim that found the quantity before. Rules hold all over a box, so both have one range there.</param>
    private void Find(ClaimId claim, Symbol of, Unit? unit, bool isFree, ClaimId? first = null)
    {
        Evaluation found = here.Evaluate(here.IsBox && first is { } before && !track.IsLost(before) ? before : claim);
        if (found is not Evaluated { Value: var value }) track.Break(claim, found is OutsideDomain ? Break.OutsideDomain : Break.Undecided);
        else if (!isFree && !Size.Fits(of, value)) track.Break(claim, Break.OutsideDomain);
        else track.Value(claim, unit is null ? value : value.In(unit));
    }

    /// <summary>The formula of a calculation, or of its slip, with each quantity as the claim that gives it.</summary>
    private Expr Bound(Calculation c)
    {
        Expr formula = changes.Of(c.Id) is FormulaIs slip ? slip.Formula : c.Formula;
        return track.Resolved(formula.Substitute(e => e is SymbolUse use ? c.Bindings.FirstOrDefault(b => b.Of == use.Symbol)?.Is : null), c.Why.From);
    }

    /// <summary>The formula with the values of letters that were found since a given was written in them.</summary>
    private Expr Lettered(Expr closed, Terrain terrain) =>
        terrain.Close(closed.Substitute(e => e is SymbolUse { Symbol: Letter letter } && track.Giving(letter, []) is { } claim ? new ValueOf(claim) : null));
}
