namespace Explain.Tests.Solutions;

/// <summary>A solution evaluated again with other measurements is the solution of the changed problem, or says what broke.</summary>
public sealed class ReplayTests
{
    private static readonly int Draws = Effort.Of(8, 100);

    private static readonly Solver Solver = new(new SolverOptions { Verify = false }), Verifying = new();

    public static TheoryData<string> Names => [.. Plays.Problems.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void WithOtherMeasurements_IsTheSolutionOfTheChangedProblem_OrSaysWhatBroke(string name)
    {
        Solution solution = Plays.Solved(name);
        Random random = new(name.Length * 31 + 7);
        for (int i = 0; i < Draws; i++) Check(solution, solution, Plays.Changes(solution, random));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void WithoutChanges_IsTheSolution(string name)
    {
        Solution solution = Plays.Solved(name);
        Check(solution, solution, []);
        Assert.Empty(solution.Replay().Broken);
    }

    /// <summary>Holds a replay of a solution, or of one that was spoilt, against the solution of the changed problem.</summary>
    internal static void Check(Solution replayed, Solution solution, GivenIs[] changes)
    {
        Replay replay = replayed.Replay([.. changes]);
        Problem changed = solution.Of.With(solution, changes);
        // Only the referee looks at what the figure states of an angle.
        bool isStated = solution.Of.Figure.Any(f => f.Says is Place { Kind: PlaceKind.Acute or PlaceKind.Obtuse });
        SolveResult result = (isStated ? Verifying : Solver).Solve(changed);
        Solution? afresh = (result as Solved)?.Solution;
        bool isSame = afresh is not null && Plays.Shape(afresh).SequenceEqual(Plays.Shape(solution));
        string told = $"{string.Join("; ", changed.Given.Select(g => g.Of + " " + g.Value))}: {string.Join("; ", replay.Broken)}";
        // The changed figure may have a shorter way, over an angle that has become right or sides that have become equal: the answers are still the same.
        bool isShorter = afresh is not null && Special(afresh) > Special(solution);
        Assert.True(isSame == (replay.Broken.Count == 0) || isShorter, $"{(isSame ? "same" : "other")} {told} {(afresh is null ? result : Plays.Shape(solution).Except(Plays.Shape(afresh)).FirstOrDefault())}");
        if (replay.Broken.Count > 0) return;
        Assert.True(afresh is not null, $"{told} {result}");
        foreach (Calculation step in afresh.Steps.OfType<Calculation>().Where(_ => isSame)) Assert.True(Agree(step.Value, replay[step.Id]), $"{step.Id} {told}");
        (AnswerValue[] fresh, AnswerValue[] old) = (Values(afresh), Values(solution));
        Assert.True(fresh.Length == old.Length, told);
        foreach ((AnswerValue value, AnswerValue same) in fresh.Zip(old).Where(p => IsCalculated(afresh, p.First) && IsCalculated(solution, p.Second)))
            Assert.True(Agree(value.Value!, replay[same.From]), told);
    }

    private static AnswerValue[] Values(Solution solution) => [.. solution.Parts.SelectMany(p => p.Answers).SelectMany(a => a.Values)];

    /// <summary>How many steps need a right angle or an equality.</summary>
    private static int Special(Solution solution) => solution.Steps.Count(s => RuleBook.Standard.Find(s.Why.Rule)!.When
        .Any(w => w is Place { Kind: PlaceKind.RightAngle } or Compare { Between: [Relation.Equal] }));

    private static bool IsCalculated(Solution solution, AnswerValue value) => solution.Steps.Any(s => s is Calculation && s.Id == value.From);

    private static bool Agree(Value solved, Value? replayed) => replayed is not null && solved.Exact == replayed.In(solved.Unit).Exact
        && solved.True.Overlaps(replayed.In(solved.Unit).True) && replayed.In(solved.Unit).True.Width <= new Fractions.Fraction(1, 1_000_000_000_000) * solved.True.Middle.Abs();
}
