namespace Explain;

/// <summary>One hearing of a solution: its steps in order, each with what it may rest on and the figures it speaks of.</summary>
internal sealed class Hearing
{
    private readonly RuleBook book;
    private readonly Solution solution;
    private readonly IIndependentModel model;
    private readonly int bits;
    private readonly List<Finding> findings = [];
    private readonly HashSet<ClaimId> ids = [];
    private readonly List<(ClaimId Step, Statement OnlyIf, Items<int> SpeaksOf)> remarks = [];
    private readonly Seen seen = new();
    private readonly Problem numbered;
    private readonly bool isFree;
    private Items<Layout> figures;

    public Hearing(RuleBook book, Solution solution, IIndependentModel model, int bits)
    {
        (this.book, this.solution, this.model, this.bits) = (book, solution, model, bits);
        numbered = solution.Of.Put(solution.Steps.OfType<Algebra>().Where(a => LetterChecks.Value(a) is not null).GroupBy(a => a.For).ToDictionary(g => g.Key, g => (Expr)LetterChecks.Value(g.First())!));
        if (model.Layouts(numbered, bits) is { } drawn) figures = drawn;
        else if (!solution.Steps.All(LetterChecks.IsOfLetters)) Find("V5", null, "cannot-be-drawn");
        else isFree = true;
    }

    private Items<int> AllFigures => [.. Enumerable.Range(0, figures.Count)];

    public Items<Finding> Findings(CancellationToken cancel)
    {
        foreach (Premise premise in solution.Premises) Hear(premise);
        foreach (Premise premise in solution.Premises.Where(p => !p.Needs.All(IsMet))) Find("V1", premise.Id, "needs");
        foreach (Step step in solution.Parts.SelectMany(p => p.Passages).SelectMany(p => p.Steps))
        {
            cancel.ThrowIfCancellationRequested();
            Hear(step, seen, AllFigures, draws: true);
        }

        foreach ((ClaimId step, Statement onlyIf, Items<int> speaksOf) in remarks)
            if (!new RemarkChecks(figures, seen, Bounding(seen), bits).Holds(onlyIf, speaksOf)) Find("V4", step, "remark");
        // Without a split each claim is held against every figure, and so is each answer.
        if (!isFree && figures.Count == 0 && !solution.Steps.OfType<Split>().Any() && solution.Of.Find.Any(g => g.Kind != GoalKind.Count)) Find("V5", null, "number-of-figures");
        Answering answering = new(solution, Bounding(seen), model, figures, bits);
        foreach (Finding finding in answering.Findings(seen)) findings.Add(finding);
        return [.. findings];
    }

    private void Find(string test, ClaimId? claim, string detail) => findings.Add(new(test, claim, detail));

    private void Hear(Premise premise)
    {
        if (!ids.Add(premise.Id)) Find("V1", premise.Id, "id-used-twice");
        bool stated = premise.Source switch
        {
            Source.Given => solution.Of.Figure.Any(f => f.Says == premise.Says) || solution.Of.Given.Any(g => Compare.Equal(g.Of, g.Value) == premise.Says),
            Source.Assumed => premise.Says is Taken,
            Source.Figure => FigureFacts.Of(solution.Of, figures).Any(f => f == premise.Says),
            _ => false,
        };
        if (!stated) Find("V1", premise.Id, "not-in-the-problem");
        (Symbol Of, Expr Is)? value = Meaning.Value(premise.Says);
        seen.Add(new(premise, value?.Of, value?.Is, AllFigures, value is null ? null : new SymbolUse(value.Value.Of)));
    }

    private bool IsMet(Compare need) => Decide.Holds(need, (a, b) => seen.Close(a) is { } left && seen.Close(b) is { } right ? Agreement.Compare(left, right) : null) != false;

    private void Hear(Step step, Seen here, Items<int> within, bool draws)
    {
        Rest(step, here);
        if (step is Series or Quadratic && Solution.Within(step).Skip(1).Any(cell => !ids.Add(cell.Id))) Find("V1", step.Id, "id-used-twice");
        if (step is Instruction) Draw(step, within);
        Apply(step, here);
        Items<int> speaksOf = [.. within.Where(i => here.Of(step.Why.From).All(t => t.Figures.Contains(i)))];
        if (step is Calculation calculation) Reckon(calculation, here, speaksOf, draws);
        else if (step is Quadratic quadratic) Solve(quadratic, here, speaksOf);
        else if (step is Algebra algebra) here.Add(new(step, algebra.For, LetterChecks.Value(algebra), speaksOf));
        else if (step is Series) here.Add(Bounding(here).Testimony(step, speaksOf));
        else here.Add(new(step, null, null, speaksOf));
        if (step is Split split && SupposedLengths.IsSplit(split)) Suppose(split, here);
        else if (step is Split division) Divide(division, here, speaksOf);
        foreach (Statement onlyIf in step.Remarks.Select(r => r.OnlyIf).OfType<Statement>()) remarks.Add((step.Id, onlyIf, speaksOf));
        if (step is Deduction { Says: HowMany many }) Count(step, many);
    }

    private void Rest(Step step, Seen here)
    {
        if (!ids.Add(step.Id)) Find("V1", step.Id, "id-used-twice");
        foreach (ClaimId id in step.Why.From.Concat(Named(step)).Where(id => here.Find(id) is null).Distinct()) Find("V1", step.Id, "not-yet-claimed " + id.Name);
    }

    private void Apply(Step step, Seen here)
    {
        if (!IsInstance(step, here)) Find("V2", step.Id, "no-instance-of " + step.Why.Rule.Name);
    }

    private static IEnumerable<ClaimId> Named(Step step) => step is Calculation c
        ? c.Formula.Claims().Concat(c.Bindings.SelectMany(b => b.Is.Claims())) : step.Says is Compare says ? says.Terms.SelectMany(t => t.Claims()) : [];

    /// <summary>Draws what the step makes, in the figures of its case.</summary>
    private void Draw(Step step, Items<int> within)
    {
        foreach (Place place in Meaning.Of(step.Says).OfType<Place>().Where(p => p.Kind is PlaceKind.Foot or PlaceKind.Midpoint))
        {
            Layout?[] more = [.. figures.Select((f, i) => within.Contains(i) ? f.With(place) : f)];
            if (more.Contains(null)) Find("V4", step.Id, "cannot-be-drawn");
            else figures = [.. more.OfType<Layout>()];
        }
    }

    private bool IsInstance(Step step, Seen here)
    {
        if (book.Find(step.Why.Rule) is not { } schema) return false;
        if (schema.IsByEvaluation) return RootCounts.Holds(step, here, bits) || step is Split split && SupposedLengths.IsSplit(split) && Supposed(here).AreAll(split) || step.Why.When.Count == 0 && (SameQuantity.Holds(step, here, Rays(here), bits) || ComparedValues.Holds(step, here, Rays(here)) || Bounding(here).Holds(step) || CountOfCases.Holds(step, here) || new LetterChecks(here, Rays(here)).PutsIn(step));
        return new SchemaInstance(schema, step, here, Cited(step, here)).Exists();
    }

    private BoundsChecks Bounding(Seen here) => new(solution.Of, model, here, Rays(here), bits);

    /// <summary>The names of rays that a step may go by: from the claims that it cites, and from the figures what no claim says of all of them.</summary>
    private RayNames Cited(Step step, Seen here) => new([.. here.Of(step.Why.From).SelectMany(t => t.Parts).OfType<Place>()], figures, [.. here.All.Where(t => t.Figures == AllFigures).SelectMany(t => t.Parts).OfType<Place>()]);

    private RayNames Rays(Seen here) => new([.. here.All.SelectMany(t => t.Parts).OfType<Place>()], figures);

    private void Reckon(Calculation c, Seen here, Items<int> speaksOf, bool draws)
    {
        Enclosure claimed = Evaluate(c, here, speaksOf, Bound(c, here));
        if (draws && !isFree && speaksOf.Count == 0) Find("V4", c.Id, "no-figure");
        foreach (int i in speaksOf)
            if (figures[i].Measure(c.Target) is not { } measured || !Agreement.Of(measured, claimed)) Find("V4", c.Id, "figure");
    }

    /// <summary>Keeps a calculation with its value, found again from the givens; the value claimed.</summary>
    private Enclosure Evaluate(Calculation c, Seen here, Items<int> speaksOf, bool isBound)
    {
        if (!isBound) Find("V2", c.Id, "bindings");
        if (c.Says != Compare.Equal(c.Target, c.Formula)) Find("V2", c.Id, "says");
        Expr bound = c.Formula.Substitute(e => e is SymbolUse use ? c.Bindings.FirstOrDefault(b => b.Of == use.Symbol)?.Is : null);
        Expr? closed = bound.Symbols().Count == 0 ? here.Close(bound) : null;
        Enclosure? own = closed is null ? null : Agreement.Number(closed, bits);
        if (own is null) closed = null;
        here.Add(new(c, c.Target, closed, speaksOf, closed is null ? null : here.Open(bound)));
        Enclosure claimed = GivenNumbers.In(c.Value, bits);
        if (c.Value.Exact is { } exact && !exact.Enclose(bits).Overlaps(c.Value.True)) Find("V4", c.Id, "two-values");
        if (own is not { } value || !Agreement.Of(value, claimed)) Find("V4", c.Id, "value");
        return claimed;
    }

    /// <summary>The coefficients and the roots, each with its value; a root speaks of the figures in which the quantity is that long.</summary>
    private void Solve(Quadratic q, Seen here, Items<int> speaksOf)
    {
        here.Add(new(q, null, null, speaksOf));
        foreach (Calculation coefficient in new[] { q.Linear, q.Constant }) Evaluate(coefficient, here, speaksOf, Bound(coefficient, here));
        foreach (Calculation root in q.Roots)
        {
            Enclosure value = GivenNumbers.In(root.Value, bits);
            Evaluate(root, here, [.. speaksOf.Where(i => figures[i].Measure(q.For) is { } measured && Agreement.Of(measured, value))], root.Bindings.Select(b => b.Of).ToHashSet().SetEquals(root.Formula.Symbols()));
        }

        if (!QuadraticChecks.AreAll([.. q.Roots.Select(r => here.Find(r.Id)?.Closed)], here.Find(q.Linear.Id)?.Closed, here.Find(q.Constant.Id)?.Closed)) Find("V5", q.Id, "roots");
    }

    private bool Bound(Calculation c, Seen here)
    {
        RayNames rays = Cited(c, here);
        return c.Bindings.Select(b => b.Of).ToHashSet().SetEquals(c.Formula.Symbols()) && c.Bindings.All(b => b.Is is ValueOf v
            && c.Why.From.Contains(v.Claim) && here.Find(v.Claim)?.Of is { } of && rays.Of(of) == rays.Of(b.Of));
    }

    private void Divide(Split split, Seen here, Items<int> within)
    {
        List<int> taken = [];
        List<Seen> held = [];
        foreach (Case one in split.Cases)
        {
            Items<int> own = [.. within.Where(i => Assumed(one.Assume, figures[i]))];
            Seen inside = here.Fork();
            foreach (Step step in one.Steps) Hear(step, inside, own, draws: one.End == CaseEnd.Holds);
            if (one.Label is { OnlyIf: { } told } && !inside.All.Any(t => t.Figures.SequenceEqual(own) && t.Parts.Contains(told))) Find("V2", split.Id, "label " + one.Name);
            if (own.Count != (one.End == CaseEnd.Holds ? 1 : 0)) Find("V5", split.Id, "case " + one.Name);
            if (one.End != CaseEnd.Holds && one.Steps is not [.., Deduction]) Find("V1", split.Id, "case-without-reason " + one.Name);
            if (one.End == CaseEnd.Holds) held.Add(inside);
            taken.AddRange(own);
        }

        if (!taken.Order().SequenceEqual(within)) Find("V5", split.Id, "number-of-cases");
        foreach (Seen inside in held) here.Take(inside);
    }

    private SupposedLengths Supposed(Seen here) => new(solution.Of, model, here, Rays(here), bits);

    /// <summary>Hears what would follow with other lengths: each case by itself, held against figures drawn with lengths that it supposes.</summary>
    private void Suppose(Split split, Seen here)
    {
        SupposedLengths lengths = Supposed(here);
        foreach (Case one in split.Cases)
        {
            if (!lengths.IsThis(split, one)) Find("V5", split.Id, "case " + one.Name);
            Seen inside = here.Fork();
            inside.Add(new(new Premise(Case.Supposed(split.Id, one.Name), one.Assume, Source.Assumed), null, null, AllFigures));
            if (one is not { Label: null, Steps: [Deduction { Says: HowMany many } counted] })
            {
                Find("V1", split.Id, "case-without-reason " + one.Name);
                continue;
            }

            Rest(counted, inside);
            Apply(counted, inside);
            Items<Items<Layout>>? drawn = lengths.Drawn(split, one);
            if (drawn is null || drawn.Value.Any(d => d.Count != many.Count)) Find("V5", counted.Id, "count");
            Items<Layout> all = [.. drawn?.SelectMany(d => d) ?? []];
            foreach (Statement onlyIf in counted.Remarks.Select(r => r.OnlyIf).OfType<Statement>())
                if (!new RemarkChecks(all, inside, Bounding(inside), bits).Holds(onlyIf, [.. Enumerable.Range(0, all.Count)])) Find("V4", counted.Id, "remark");
        }
    }

    private bool Assumed(Statement assume, Layout figure) => assume is Compare { Terms: [SymbolUse left, var right], Between: [var relation] }
        && figure.Measure(left.Symbol) is { } measured && Agreement.Number(right, bits) is { } limit && relation switch
        {
            Relation.Less => Enclosure.Less(measured, limit) == true,
            Relation.Greater => Enclosure.Less(limit, measured) == true,
            _ => false,
        };

    /// <summary>A count speaks of the measurements alone, before acute or obtuse chooses.</summary>
    private void Count(Step step, HowMany many)
    {
        Problem measured = numbered with { Figure = [.. solution.Of.Figure.Where(f => f.Says is not Place { Kind: PlaceKind.Acute or PlaceKind.Obtuse })] };
        if (model.Layouts(measured, bits)?.Count != many.Count) Find("V5", step.Id, "count");
    }
}
