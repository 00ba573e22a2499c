namespace Explain;

/// <summary>Builds the solution of a problem about one triangle from the relations of its topic.</summary>
internal sealed class SolutionBuilder
{
    private readonly Problem problem;
    private readonly Topic topic;
    private readonly RuleBook book;
    private readonly Opening opening;
    private readonly Working working;
    private readonly Letters letters;
    private readonly Ledger numbers;
    private readonly Ledger plain;
    private readonly Refusals refusals;
    private readonly List<Step> done = [];
    private readonly Dictionary<Symbol, (ClaimId From, Bounds Bounds)> shown = [];
    private readonly HashSet<ClaimId> rounded = [];
    private readonly Pursuit pursuit;
    private Swinging? swinging;
    private Deduction? count;

    public SolutionBuilder(Problem problem, Topic topic, RuleBook book, Work work)
    {
        (this.problem, this.topic, this.book) = (problem, topic, book);
        (opening, working) = (new(problem, topic, work), new(book, [.. topic.Working, .. TriangleMeasures.For(problem)]));
        letters = new(book, topic, opening.Ledger, problem);
        numbers = letters.Steps.Count == 0 ? opening.Ledger : new Opening(letters.Numbered, topic, work).Ledger;
        plain = new Working(book, SpecialTriangles.Equalities).Spread(numbers.Fork());
        refusals = new(problem, opening.Ledger);
        pursuit = new(book, working, opening.Ledger);
    }

    private Ledger Ledger => pursuit.Ledger;

    private Items<(string Name, Ledger Ledger)> Cases => pursuit.Cases;

    private IEnumerable<Polygon> Triangles => Ledger.Triangles;

    private Polygon Triangle => Triangles.First();

    public TopicResult Build()
    {
        if (Fault() is { } fault) return new(null, [fault]);
        Items<Compare> feasible = new Feasible(numbers).Needs(Triangle);
        List<Part> parts = [];
        foreach (IGrouping<string?, Goal> group in problem.Find.GroupBy(g => g.Letter))
        {
            if (PartOf(group.Key, [.. group], isFirst: parts.Count == 0) is not { } part) return new(null, [Refusal([.. group])]);
            parts.Add(part);
            rounded.UnionWith(part.Answers.SelectMany(a => a.Values).Where(IsRounded).Select(v => v.From));
        }

        if (Contradiction() is { } contradiction) return new(null, [contradiction]);
        if (!IsNone && Misfit.Fault(Found) is { } misfit) return new(null, [misfit]);
        Items<ClaimId> answers = [.. parts.SelectMany(p => p.Answers).SelectMany(a => a.Values).Select(v => v.From)];
        Items<Passage> checks = [.. letters.WithPutIn(Checks(answers), done, answers)];
        parts[0] = parts[0] with { Passages = [.. parts[0].Passages.Select(p => p with { Steps = Letters.Used(p.Steps, done, answers) }).Where(p => p.Steps.Count > 0)] };
        parts[0] = parts[0] with { Passages = [Plan(), .. parts[0].Passages] };
        parts[^1] = parts[^1] with { Passages = [.. parts[^1].Passages, .. checks, .. OtherLengths()] };
        return new(new Solution(problem, topic.Id, Needing(IsNone ? [] : feasible), [.. parts], [], Warnings.Of([.. parts], Cases.Count), [.. topic.Cautions.Concat(Things.Cautions(problem)).Distinct()], Verification.NotRun), []);
    }

    private bool OnlyCounts => problem.Find.All(g => g.Kind == GoalKind.Count);

    /// <summary>Whether the answer is that there is no triangle.</summary>
    private bool IsNone => count?.Says is HowMany { Count: 0 };

    private Items<Premise> Needing(Items<Compare> feasible) => new Needs(Ledger, Consistent).Of(opening.Premises, Triangle, feasible);

    private Consistency Consistent => new(book, topic, letters.Numbered, Ledger.Work);

    private ProblemError? Fault()
    {
        if (letters.Fault() is { } lettered) return lettered;
        if (!OnlyCounts && Impossible() is { } impossible) return impossible;
        if (opening.Layouts.Count > 1 && Triangles.Count() > 1) return refusals.NotFixed(opening.Layouts);
        if (problem.Find.FirstOrDefault(g => !Asked.IsSupported(g)) is { } goal) return refusals.NotSupported(goal);
        return Triangles.Any() ? null : refusals.NotSupported(problem.Find[0]);
    }

    /// <summary>Why the measurements, or what equal sides and angles make of them, fit no triangle; null where nothing speaks against one.</summary>
    private ProblemError? Impossible() => new[] { numbers, plain }
        .SelectMany(l => Triangles.Where(t => !new Feasible(l).Holds(t)).Select(t => new Refusals(letters.Numbered, l).NoSuchTriangle(t))).FirstOrDefault();

    private Misfit Misfit => new(letters.Numbered, working, Triangle);

    /// <summary>What is known in each case.</summary>
    private Items<Ledger> Found => Cases.Count == 0 ? [Ledger] : [.. Cases.Select(c => c.Ledger)];

    private Part? PartOf(string? letter, Items<Goal> goals, bool isFirst)
    {
        List<Passage> passages = [];
        bool counts = goals.Any(g => g.Kind == GoalKind.Count);
        if (Count(isFirst, counts) is { } counted)
        {
            passages.Add(counted);
            done.AddRange(counted.Steps);
        }

        if (Work(goals, counts && count is null) is not { } reached) return null;
        Items<Step> work = isFirst ? [.. letters.Steps, .. reached] : reached;
        done.AddRange(work);
        if (work.Count > 0) passages.Add(new(PassageUse.Working, Noticing.In(work, Ledger, rounded)) { Heading = topic.Heading(goals) });
        foreach (Goal bounds in goals.Where(g => g.Kind == GoalKind.Bounds && !IsGiven(g)))
        {
            if (BoundsOf(bounds) is { Count: > 0 } steps) passages.Add(new(PassageUse.Bounds, steps) { Heading = TopicPhrases.BoundsHeading() });
            else if (Examined(bounds) is { } remark) passages.Add(new(PassageUse.Bounds, []) { Heading = TopicPhrases.BoundsHeading(), Remarks = [remark] });
        }

        if (IsAccuracyShown) passages.Add(new(PassageUse.Accuracy, [.. goals.Where(g => g is { Kind: GoalKind.Value, Wanted: not null } && !IsGiven(g)).SelectMany(g => BoundsOf(g))]) { Remarks = Boundless(goals) });
        Items<Answer>? answers = Answers(goals);
        return answers is null ? null : new Part(letter, goals, [.. passages], answers.Value) { Several = Cases.Count > 1 ? swinging?.Several(pursuit.Split) : null };
    }

    /// <summary>The count of triangles, where it is in question or asked for.</summary>
    private Passage? Count(bool isFirst, bool isAsked)
    {
        if (isFirst && Triangles.Count() == 1) swinging = Swinging.Of(book, Ledger, Triangle);
        Items<Step> steps = isFirst && swinging?.Count() is { } ambiguous ? ambiguous.Steps
            : isAsked && count is null ? new Counting(book, Ledger, Triangle).Steps() : [];
        if (steps.Count == 0) return null;
        count = (Deduction)steps[^1];
        return new(PassageUse.Existence, steps);
    }

    private Passage Plan() => new(PassageUse.Plan, [])
    {
        Remarks = OnlyCounts ? [] : swinging is not null ? swinging.Plan : topic.Plan is { } own ? own(problem) : Planning.Of(done, problem),
    };

    /// <summary>Where no part asks for bounds, the page ends with those of its answers.</summary>
    private bool IsAccuracyShown => Cases.Count == 0 && opening.Premises.Any(p => p.Within is not null) && problem.Find.All(g => g.Kind != GoalKind.Bounds);

    /// <summary>What has no bounds, and why.</summary>
    private Items<Remark> Boundless(Items<Goal> goals) => [.. goals.Where(g => g is { Kind: GoalKind.Value, Wanted: not null })
        .Select(g => new BoundsFault(opening.Premises, Ledger).Of(pursuit.Found(g.Wanted!), g.Wanted!)).Where(f => f is not null).Select(f => new Remark(f!.Value.Message, null))];

    private bool IsGiven(Goal goal) => Ledger.Knows(pursuit.Found(goal.Wanted!)) && Ledger.ClaimOf(pursuit.Found(goal.Wanted!)).IsGiven;

    private Items<Step> BoundsOf(Goal goal)
    {
        if (Cases.Count > 1) return [];
        Symbol quantity = pursuit.Found(goal.Wanted!);
        Items<Step> before = [];
        if (IsSide(goal.Wanted!))
        {
            before = new Working(book, [new(PerpendicularRules.Book.DistanceBySine, 1, Targets: 1)]).Reach(Ledger, [goal.Wanted!])!.Steps;
            quantity = goal.Wanted!;
        }

        Symbol[] others = [.. problem.Find.Where(g => g.Kind == GoalKind.Value).Select(g => g.Wanted!).Where(w => w is Length && w != quantity && Ledger.Knows(w) && !Ledger.ClaimOf(w).IsGiven).Distinct()];
        return new BoundsWorking(book, topic, opening.Premises, Ledger, RoundingOf).Of(quantity, [.. others], shown) is { } steps ? [.. before, .. steps] : [];
    }

    /// <summary>Where the extremes are when a measurement moves the quantity both ways, so that they may lie between the bounds.</summary>
    private Remark? Examined(Goal goal)
    {
        if (Cases.Count > 1 || new Tolerances(opening.Premises, Ledger).Of(pursuit.Found(goal.Wanted!)) is not { Proof: Subdivided { LowerAt.Count: > 0, UpperAt.Count: > 0 } at }) return null;
        static Items<Statement> Place(Items<Binding> at) => [.. at.Select(b => (Statement)Compare.Equal(b.Of, b.Is))];
        return new(TopicPhrases.Examined(goal.Wanted!, Place(at.LowerAt), Place(at.UpperAt)), null);
    }

    /// <summary>Whether a distance is a side because an angle is right: it varies otherwise than the side once that angle does.</summary>
    private bool IsSide(Symbol wanted) => pursuit.Found(wanted) is var quantity && quantity != wanted && TriangleParts.Sides(Triangle).Any(s => s == quantity);

    private Rounding RoundingOf(Value value) => AnswerRounding.Of(problem, value.Unit) ?? Rounding.Default(value.Unit);

    private bool IsRounded(AnswerValue answer) => answer.Value is { } value && !NumberText.Rounded(value, RoundingOf(value)).IsExact;

    /// <summary>The steps to what is asked; to the whole triangle where triangles are to be counted that no rule counts.</summary>
    private Items<Step>? Work(Items<Goal> goals, bool counts)
    {
        if (pursuit.To([.. goals.SelectMany(Wanted), .. counts ? TriangleParts.Sides(Triangle) : []], swinging) is not { } steps) return null;
        return counts ? steps.With(count = new Counting(book, Ledger, Triangle).After(pursuit.Split, Cases.Count)) : steps;
    }

    private IEnumerable<Symbol> Wanted(Goal goal) => Asked.Of(goal, Triangle);

    private Items<Answer>? Answers(Items<Goal> goals)
    {
        List<Answer> answers = [];
        foreach (Goal goal in goals)
        {
            List<AnswerValue> values = [];
            if (goal.Kind == GoalKind.Count) values.Add(new(null, null, count!.Id, Value.Of(Exact.Of(((HowMany)count.Says).Count), Unit.None), null, null));
            foreach (Symbol symbol in Wanted(goal))
                foreach ((string? name, Ledger ledger) in Cases.Count < 2 ? [(null, Ledger)] : Cases.Select(c => ((string?)c.Name, c.Ledger)))
                {
                    if (ValueOf(goal, symbol, name, ledger) is not { } value) return null;
                    values.Add(value);
                }

            answers.Add(new(goal, [.. values]));
        }

        return [.. answers];
    }

    private AnswerValue? ValueOf(Goal goal, Symbol symbol, string? name, Ledger ledger)
    {
        Symbol quantity = pursuit.Found(symbol);
        ClaimId from = ledger.ClaimOf(quantity);
        Value value = ledger.Evaluate(new ValueOf(from))!;
        Bounds? bounds;
        bool isSide = IsSide(symbol);
        if (shown.TryGetValue(isSide ? symbol : quantity, out (ClaimId From, Bounds Bounds) worked)) (from, bounds) = (goal.Kind == GoalKind.Bounds ? worked.From : from, worked.Bounds);
        else bounds = isSide ? null : new Tolerances(opening.Premises, ledger).Of(quantity);
        if (goal.Kind == GoalKind.Bounds && bounds is null) return null;
        string? item = Asked.IsList(goal) ? QuantityGrammar.Write(symbol, English.UnitedKingdom) : null;
        return new(name, item, from, value, AnswerRounding.Of(problem, value.Unit), bounds);
    }

    private IEnumerable<Passage> Checks(Items<ClaimId> answers)
    {
        if (OnlyCounts) return [];
        Symbol[] asked = [.. problem.Find.SelectMany(Wanted)];
        Passage? roots = asked.Any(a => a is Length or Angle) ? swinging?.Check(Cases, asked, problem) : null;
        if (roots is not null && asked.All(a => a is Length or Angle)) return [roots];
        Checking checking = new(book, topic);
        return [.. roots is null ? [] : new[] { roots }, .. Found.SelectMany(l => checking.Of(l, done, answers))];
    }

    private Items<Passage> OtherLengths() => !IsNone && swinging?.OtherLengths(problem) is { } other ? [other] : [];

    private ProblemError? Contradiction() => !IsNone && Clash.Find(Consistent, letters.Numbered) is { } clash ? Refusals.Contradiction(clash) : null;

    private ProblemError Refusal(Items<Goal> goals)
    {
        foreach (Goal goal in goals.Where(g => g.Kind == GoalKind.Bounds && Cases.Count == 0 && Ledger.Knows(pursuit.Found(g.Wanted!))))
            if (new BoundsFault(opening.Premises, Ledger).Of(pursuit.Found(goal.Wanted!), goal.Wanted!) is { } fault) return Refusals.NoBounds(goal, fault);
        if (Misfit.Fault(Found) is { } misfit) return misfit;
        Polygon? open = Cases.Count > 0 || Misfit.HasEnough ? null : Triangles.FirstOrDefault(t => !working.Reaches(Ledger, TriangleParts.Sides(t)));
        if (working.Reach(Ledger, [.. TriangleParts.Sides(Triangle)]) is { Impossible: true }) return refusals.NoSuchTriangle(Triangle);
        return open is null ? refusals.NotSupported(goals[0]) : refusals.NotEnough(goals.SelectMany(Wanted).Concat(TriangleParts.Sides(open)).First(), open);
    }
}
