namespace Explain;

/// <summary>
/// What is established so far in one attempt at a solution: premises, facts, known quantities with the claim that gives
/// each, and the next free id. Used by one thread while a solution is built; never part of it.
/// </summary>
internal sealed class Ledger
{
    private readonly Dictionary<Symbol, ClaimId> known;
    private readonly Dictionary<Symbol, (ClaimId Claim, Expr Is)> expressed;
    private readonly List<(Place Fact, ClaimId Claim)> facts;
    private readonly List<(Compare Says, ClaimId Claim)> relations;
    private readonly HashSet<ClaimId> measured;
    private readonly Dictionary<ClaimId, Symbol> stated;
    private readonly string prefix;
    private readonly Unit? lengths;
    private int steps;

    /// <param name="arrangement">The figure.</param>
    /// <param name="lengths">The unit of lengths; null where none is given.</param>
    /// <param name="work">Counts the work of the search.</param>
    public Ledger(Arrangement arrangement, Unit? lengths, Work work)
    {
        Work = work;
        (Arrangement, Closing, known, expressed, facts, relations, measured, stated, prefix, this.lengths) = (arrangement, new(), [], [], [], [], [], [], "s", lengths);
    }

    private Ledger(Ledger other, string prefix)
    {
        Work = other.Work;
        (Arrangement, Closing, known, expressed, facts, relations, measured, stated, this.prefix, lengths) =
            (other.Arrangement, other.Closing.Fork(), new(other.known), new(other.expressed), [.. other.facts], [.. other.relations], [.. other.measured], new(other.stated), prefix, other.lengths);
    }

    public Arrangement Arrangement { get; private set; }

    public Closing Closing { get; }

    public Work Work { get; }

    public IReadOnlyCollection<Place> Facts => [.. facts.Select(f => f.Fact)];

    /// <summary>The triangles of the figure, each by the name that the problem gives it.</summary>
    public IEnumerable<Polygon> Triangles => facts.Where(f => f.Fact.Kind == PlaceKind.Triangle).Select(f => (Polygon)f.Fact.Of[0]);

    public IEnumerable<Symbol> Known => known.Keys;

    /// <summary>What is known, with what it costs to lean on: nothing for a given, a little for what was calculated.</summary>
    public IEnumerable<(Symbol Symbol, double Cost)> Costs => known.Select(k => (k.Key, k.Value.IsGiven ? 0 : 0.25));

    public ClaimId NextStep() => new(prefix + (++steps).ToString(System.Globalization.CultureInfo.InvariantCulture));

    /// <summary>A ledger that goes on from here apart.</summary>
    public Ledger Fork() => new(this, prefix) { steps = steps };

    /// <summary>A ledger that goes on from here without knowing one quantity, to find it again in another way.</summary>
    public Ledger Without(Symbol symbol)
    {
        Ledger other = Fork();
        other.known.Remove(Arrangement.Canonical(symbol));
        return other;
    }

    /// <summary>A ledger that knows these quantities and no others.</summary>
    public Ledger Only(IEnumerable<Symbol> symbols)
    {
        Ledger other = Fork();
        HashSet<Symbol> kept = [.. symbols.Select(Arrangement.Canonical)];
        foreach (Symbol symbol in known.Keys.Where(k => !kept.Contains(k))) other.known.Remove(symbol);
        return other;
    }

    /// <summary>Goes on numbering after the steps of another ledger.</summary>
    public void After(Ledger other) => steps = other.steps;

    /// <summary>A ledger for one case of a split: it knows what this one knows and goes on apart.</summary>
    public Ledger ForCase(ClaimId split, string name) => new(this, $"{split.Name}.{name}.");

    /// <summary>Records the value of a quantity that was measured and may be somewhat different: no equality rests on it.</summary>
    public void Measure(Symbol symbol, ClaimId claim, Expr value)
    {
        measured.Add(claim);
        Learn(symbol, claim, value);
    }

    /// <summary>
    /// Records that a claim gives the value of a quantity, as a formula in values of earlier claims; an angle of 90° is a right
    /// angle unless it was measured or follows from measurements, for it need not be one then.
    /// </summary>
    public void Learn(Symbol symbol, ClaimId claim, Expr value)
    {
        Symbol own = Arrangement.Canonical(symbol);
        known[own] = claim;
        stated[claim] = symbol;
        Closing.Add(claim, value);
        if (own is not Angle angle || IsMeasured(angle) || Compare(angle, Expr.Degrees(90)) != 0) return;
        Place right = new(PlaceKind.RightAngle, [new Corner(angle.First, angle.Vertex, angle.Second)]);
        if (ClaimOf(right) is null) facts.Add((right, claim));
    }

    /// <summary>Records that a claim gives a quantity as an expression in letters.</summary>
    public void Express(Symbol symbol, ClaimId claim, Expr value) => expressed[Arrangement.Canonical(symbol)] = (claim, value);

    /// <summary>What is said of a quantity before any letter is known: its value, or an expression in letters; null when nothing is.</summary>
    public Expr? Stated(Symbol symbol) => Knows(symbol) ? Closing.Close(ValueOf(symbol)) : expressed.TryGetValue(Arrangement.Canonical(symbol), out (ClaimId, Expr Is) said) ? said.Is : null;

    /// <summary>Records what a calculation found.</summary>
    public void Learn(Calculation step) => Learn(step.Target, step.Id, WithValues(step.Formula));

    public void Learn(Statement statement, ClaimId claim)
    {
        foreach (Statement part in Meaning.Of(statement))
        {
            if (part is Compare relation) relations.Add((relation, claim));
            if (part is not Place place) continue;
            facts.Add((place, claim));
            if (LineOf(place) is { Count: > 0 } line) Arrange(line);
        }
    }

    /// <summary>Records that two points lie on one ray, whatever their order.</summary>
    public void LearnRay(Point from, Point first, Point second) =>
        Arrangement = Arrangement with { Rays = Arrangement.Rays.With((from, first, second)) };

    /// <summary>Takes spellings for quantities that are new to the figure.</summary>
    public void Spell(Items<Symbol> symbols) => Arrangement = Arrangement with { Spelled = [.. Arrangement.Spelled, .. symbols] };

    public bool Knows(Symbol symbol) => known.ContainsKey(Arrangement.Canonical(symbol));

    /// <summary>The quantity whose value a claim gives, by the name that the claim gives it; null where it gives none.</summary>
    public Symbol? Stated(ClaimId claim) => stated.GetValueOrDefault(claim);

    public ClaimId ClaimOf(Symbol symbol) => known.TryGetValue(Arrangement.Canonical(symbol), out ClaimId claim) ? claim : expressed[Arrangement.Canonical(symbol)].Claim;

    public Expr ValueOf(Symbol symbol) => new ValueOf(ClaimOf(symbol));

    /// <summary>The claim that states a fact, in any of its namings; null when none does.</summary>
    public ClaimId? ClaimOf(Place fact)
    {
        int at = facts.FindIndex(f => f.Fact == fact || Instances.Same(f.Fact, fact));
        return at < 0 ? null : facts[at].Claim;
    }

    /// <summary>The claims that put points on one line, by which a quantity has the name that it goes by.</summary>
    public IEnumerable<ClaimId> WhyRenamed(Symbol symbol) => symbol switch
    {
        Ratio r => WhyRenamed(r.Of),
        Angle a when Arrangement.Canonical(a) is var own => WhyOnRay(a.Vertex, a.First, own).Concat(WhyOnRay(a.Vertex, a.Second, own)),
        _ => [],
    };

    private IEnumerable<ClaimId> WhyOnRay(Point from, Point through, Angle own) => own.First == through || own.Second == through || Arrangement.IsRay(from, own.First, through) || Arrangement.IsRay(from, own.Second, through) ? []
        : facts.Where(f => LineOf(f.Fact) is { Count: > 0 } line && (Arrangement.AreOnRay(line, from, own.First, through) || Arrangement.AreOnRay(line, from, own.Second, through))).Take(1).Select(f => f.Claim);

    /// <summary>The triangle with these corners, in any order; null when the figure has none.</summary>
    public Polygon? TriangleOf(IEnumerable<Point> corners) => Triangles.FirstOrDefault(t => t.Corners.ToHashSet().SetEquals(corners));

    /// <summary>The claim that states a relation between quantities, known or not; null when none does.</summary>
    public ClaimId? ClaimOf(Compare relation)
    {
        Compare wanted = Spelled(relation), turned = relation.Between is [Relation.Equal] ? wanted with { Terms = [wanted.Terms[1], wanted.Terms[0]] } : wanted;
        int at = relations.FindIndex(r => Spelled(r.Says) is var says && (says == wanted || says == turned));
        return at < 0 ? null : relations[at].Claim;
    }

    /// <summary>The comparison with each quantity by its first name.</summary>
    public Compare Spelled(Compare compare) => compare with { Terms = [.. compare.Terms.Select(Arrangement.Canonical)] };

    /// <summary>The value of a formula in known quantities; null outside its domain or undecided.</summary>
    public Value? Evaluate(Expr expr) => Evaluator.Evaluate(Closing.Close(WithValues(expr))) is Evaluated { Value: var value }
        ? lengths is null ? value : value.WithLengths(lengths) : null;

    /// <summary>The formula of a claim, traced back to the claims that are left as symbols.</summary>
    public Expr Opened(ClaimId claim, Func<ClaimId, Symbol?> kept) => Closing.Open(claim, kept);

    /// <summary>The sign of a difference of formulas in known quantities, decided; null when it cannot be.</summary>
    public int? Compare(Expr left, Expr right) => Evaluator.Compare(Closing.Close(WithValues(left)), Closing.Close(WithValues(right)));

    /// <summary>Whether a comparison is stated, or holds for certain between known quantities.</summary>
    public bool Holds(Compare comparison) => ClaimOf(comparison) is not null || comparison.Terms.All(t => t.Symbols().All(Knows)) && Decide.Holds(comparison, Compare) == true;

    /// <summary>Whether a comparison is stated, or holds whatever the measurements are between their bounds: equal measurements need not be equal.</summary>
    public bool HoldsForCertain(Compare comparison) => Holds(comparison)
        && (ClaimOf(comparison) is not null || !comparison.Between.Contains(Relation.Equal) || !comparison.Terms.SelectMany(t => t.Symbols()).Any(IsMeasured));

    private bool IsMeasured(Symbol symbol) => measured.Count > 0 && Opened(ClaimOf(symbol), id => measured.Contains(id) ? symbol : null).Symbols().Count > 0;

    /// <summary>The formula with values of claims in place of known quantities.</summary>
    public Expr WithValues(Expr expr) => expr.Substitute(e => e is SymbolUse use && Knows(use.Symbol) ? ValueOf(use.Symbol) : null);

    private static Items<Point> LineOf(Place place) => place.Kind switch
    {
        PlaceKind.InLine => [.. place.Of.Cast<Point>()],
        PlaceKind.Between or PlaceKind.Midpoint when place.Of[1] is Line l => [l.From, (Point)place.Of[0], l.To],
        PlaceKind.OnProduced when place.Of[1] is Line l => [l.From, l.To, (Point)place.Of[0]],
        _ => [],
    };

    /// <summary>A new line may bring two names of one angle together: what was known under one is known under both.</summary>
    private void Arrange(Items<Point> line)
    {
        Arrangement = Arrangement.With(line);
        foreach ((Symbol symbol, ClaimId claim) in known.ToArray()) known.TryAdd(Arrangement.Canonical(symbol), claim);
    }
}
