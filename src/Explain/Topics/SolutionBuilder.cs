namespace Explain;

/// <summary>Builds the solution of a problem about one triangle from the relations of its topic.</summary>
internal sealed class SolutionBuilder
{
    private readonly Problem problem;
    private readonly Topic topic;
    private readonly RuleBook book;
    private readonly Opening opening;
    private readonly Working working;
    private readonly Refusals refusals;
    private readonly Dictionary<Symbol, Symbol> found = [];
    private readonly List<Step> done = [];
    private readonly Dictionary<Symbol, (ClaimId From, Bounds Bounds)> shown = [];
    private Items<(string Name, Ledger Ledger)> cases;

    public SolutionBuilder(Problem problem, Topic topic, RuleBook book, Work work)
    {
        (this.problem, this.topic, this.book) = (problem, topic, book);
        (opening, working) = (new(problem, topic, work), new(book, topic.Working));
        refusals = new(problem, opening.Ledger);
    }

    private Ledger Ledger => opening.Ledger;

    private Polygon Triangle => (Polygon)Ledger.Facts.First(f => f.Kind == PlaceKind.Triangle).Of[0];

    public TopicResult Build()
    {
        if (Fault() is { } fault) return new(null, [fault]);
        List<Part> parts = [];
        foreach (IGrouping<string?, Goal> group in problem.Find.GroupBy(g => g.Letter))
        {
            if (PartOf(group.Key, [.. group], isFirst: parts.Count == 0) is not { } part) return new(null, [Refusal([.. group])]);
            parts.Add(part);
        }

        if (Contradiction() is { } contradiction) return new(null, [contradiction]);
        parts[^1] = parts[^1] with { Passages = [.. parts[^1].Passages, .. Checks()] };
        Items<Warning> warnings = cases.Count > 1 ? [new(ErrorCodes.SeveralSolutions, TopicPhrases.SeveralSolutions())] : [];
        return new(new Solution(problem, topic.Id, opening.Premises, [.. parts], [], warnings, [.. topic.Cautions.Concat(Things.Cautions(problem)).Distinct()], Verification.NotRun), []);
    }

    private ProblemError? Fault()
    {
        if (problem.Given.FirstOrDefault(g => g.Value.Symbols().Any()) is { } lettered) return Refusals.NotInLetters(lettered);
        if (Ledger.Facts.Any(f => f.Kind == PlaceKind.Triangle) && !new Feasible(Ledger).Holds(Triangle)) return refusals.NoSuchTriangle(Triangle);
        if (problem.Find.FirstOrDefault(g => g.Kind is not (GoalKind.Value or GoalKind.Bounds or GoalKind.Angles or GoalKind.Sides)) is { } goal) return refusals.NotSupported(goal);
        return Ledger.Facts.Any(f => f.Kind == PlaceKind.Triangle) ? null : refusals.NotSupported(problem.Find[0]);
    }

    private Part? PartOf(string? letter, Items<Goal> goals, bool isFirst)
    {
        List<Passage> passages = [];
        if (isFirst) passages.AddRange(Before());
        if (Work(goals) is not { } steps) return null;
        done.AddRange(steps);
        if (steps.Count > 0) passages.Add(new(PassageUse.Working, steps));
        foreach (Goal bounds in goals.Where(g => g.Kind == GoalKind.Bounds))
            if (BoundsOf(bounds) is { } shown) passages.Add(shown);
        Items<Answer>? answers = Answers(goals);
        return answers is null ? null : new Part(letter, goals, [.. passages], answers.Value);
    }

    /// <summary>The plan, and the count of triangles where it is in question.</summary>
    private IEnumerable<Passage> Before()
    {
        SwingingSide? swinging = SwingingSide.Of(Triangle, Ledger);
        Passage? count = swinging is null ? null : new AmbiguousCase(book, Ledger, swinging).Count();
        Items<Remark> plan = count is null ? topic.Plan(problem) : [new(TopicPhrases.CountFirst(), null), new(TopicPhrases.UseSineRule(swinging!.Opposite), null)];
        return new[] { new Passage(PassageUse.Plan, []) { Remarks = plan }, count }.OfType<Passage>();
    }

    private Passage? BoundsOf(Goal goal) => cases.Count > 0 ? null
        : new BoundsWorking(book, topic, opening.Premises, Ledger).Of(found.GetValueOrDefault(goal.Wanted!, goal.Wanted!), shown);

    private Items<Step>? Work(Items<Goal> goals)
    {
        List<Step> steps = [];
        Symbol[] wanted = [.. goals.SelectMany(Wanted).Where(s => s is not DistanceToLine)];
        if (cases.Count == 0)
        {
            if (working.Reach(Ledger, wanted) is not { Impossible: false } reached) return null;
            steps.AddRange(reached.Steps);
            cases = reached.Cases;
        }
        else if (!wanted.All(w => cases.All(c => c.Ledger.Knows(w))))
        {
            return null;
        }

        foreach (DistanceToLine distance in goals.SelectMany(Wanted).OfType<DistanceToLine>().Where(d => !found.ContainsKey(d)))
        {
            if (cases.Count > 0 || new Heights(book, Ledger, working).Find(distance) is not { } height) return null;
            steps.AddRange(height.Steps);
            found[distance] = height.Is;
        }

        return [.. steps];
    }

    private static IEnumerable<Symbol> Wanted(Goal goal) => goal.Kind switch
    {
        GoalKind.Angles => TriangleParts.Angles(goal.Shape!),
        GoalKind.Sides => TriangleParts.Sides(goal.Shape!),
        _ => [goal.Wanted!],
    };

    private Items<Answer>? Answers(Items<Goal> goals)
    {
        List<Answer> answers = [];
        foreach (Goal goal in goals)
        {
            List<AnswerValue> values = [];
            foreach (Symbol symbol in Wanted(goal))
                foreach ((string? name, Ledger ledger) in cases.Count == 0 ? [(null, Ledger)] : cases.Select(c => ((string?)c.Name, c.Ledger)))
                {
                    if (ValueOf(goal, symbol, cases.Count == 1 ? null : name, ledger) is not { } value) return null;
                    values.Add(value);
                }

            answers.Add(new(goal, [.. values]));
        }

        return [.. answers];
    }

    private AnswerValue? ValueOf(Goal goal, Symbol symbol, string? name, Ledger ledger)
    {
        Symbol quantity = found.GetValueOrDefault(symbol, symbol);
        ClaimId from = ledger.ClaimOf(quantity);
        Value value = ledger.Evaluate(new ValueOf(from))!;
        Bounds? bounds;
        if (goal.Kind == GoalKind.Bounds && shown.TryGetValue(quantity, out (ClaimId From, Bounds Bounds) worked)) (from, bounds) = worked;
        else bounds = new Tolerances(opening.Premises, ledger).Of(quantity);
        if (goal.Kind == GoalKind.Bounds && bounds is null) return null;
        string? item = goal.Kind is GoalKind.Angles or GoalKind.Sides ? QuantityGrammar.Write(symbol, English.UnitedKingdom) : null;
        return new(name, item, from, value, Rounding(value), bounds);
    }

    private Rounding? Rounding(Value value)
    {
        string kind = value.Unit.IsAngle ? "angles" : value.Unit.Power == 2 ? "areas" : value.Unit.Power == 0 ? "ratios" : "lengths";
        return problem.Round.FirstOrDefault(r => r.Of == kind)?.Rule ?? problem.Round.FirstOrDefault(r => r.Of is null)?.Rule;
    }

    private IEnumerable<Passage> Checks()
    {
        Checking checking = new(book, topic);
        Passage[] checks = [.. (cases.Count == 0 ? [Ledger] : cases.Select(c => c.Ledger)).Select(l => checking.Of(l, done)).OfType<Passage>()];
        return checks.GroupBy(c => c.Use).Select(g => new Passage(g.Key, [.. g.SelectMany(c => c.Steps)]));
    }

    private ProblemError? Contradiction() => Clash.Find(new Consistency(book, topic, problem, Ledger.Work), problem) is { } clash ? Refusals.Contradiction(clash) : null;

    private ProblemError Refusal(Items<Goal> goals)
    {
        bool fixedShape = cases.Count > 0 || working.Reaches(Ledger, TriangleParts.Sides(Triangle));
        if (working.Reach(Ledger, [.. TriangleParts.Sides(Triangle)]) is { Impossible: true }) return refusals.NoSuchTriangle(Triangle);
        return fixedShape ? refusals.NotSupported(goals[0]) : refusals.NotEnough(Wanted(goals[0]).First(), Triangle);
    }
}
