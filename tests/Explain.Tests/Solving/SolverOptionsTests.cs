using System.Diagnostics;

namespace Explain.Tests.Solving;

/// <summary>What a solver is told: topics, rules, whether to verify, how much work.</summary>
public sealed class SolverOptionsTests
{
    private static readonly Problem Triangle = Problem.About("solve a triangle").Figure("ABC is a triangle")
        .Given("AB", "7 cm").Given("BC", "8 cm").Given("CA", "9 cm").Find("angle ABC");

    [Fact]
    public void AnAddedRelation_IsTriedInEveryTopicAndVerified()
    {
        Rule areaOfSides = AreaRule("area-from-three-sides", wrong: false);
        Solver solver = new(new SolverOptions { Rules = RuleBook.Standard.With([areaOfSides]) });
        Problem area = Problem.About("solve a triangle").Figure("ABC is a triangle").Given("AB", "13 cm").Given("BC", "14 cm").Given("CA", "15 cm").Find("area of ABC");
        Solution solution = Assert.IsType<Solved>(solver.Solve(area)).Solution;
        Assert.Equal("84", Assert.Single(solution.Parts[0].Answers[0].Values).Value!.Exact!.ToString());
        Assert.Contains(solution.Steps, s => s.Why.Rule == areaOfSides.Id);
        Assert.DoesNotContain(Assert.IsType<Solved>(new Solver().Solve(area)).Solution.Steps, s => s.Why.Rule == areaOfSides.Id);
    }

    [Fact]
    public void AnAddedRelationThatIsFalse_IsFoundByTheReferee()
    {
        Solver solver = new(new SolverOptions { Rules = RuleBook.Standard.With([AreaRule("area-wrong", wrong: true)]) });
        Problem area = Problem.About("solve a triangle").Figure("ABC is a triangle").Given("AB", "13 cm").Given("BC", "14 cm").Given("CA", "15 cm").Find("area of ABC");
        Assert.Contains(Assert.IsType<Failed>(solver.Solve(area)).Findings, f => f.Test == "V4");
    }

    [Fact]
    public void WithoutVerifying_ASolutionSaysSo()
    {
        Solution plain = Assert.IsType<Solved>(new Solver(new SolverOptions { Verify = false }).Solve(Triangle)).Solution;
        Solution verified = Assert.IsType<Solved>(new Solver().Solve(Triangle)).Solution;
        Assert.Equal((false, true), (plain.Verification.Ran, verified.Verification.Ran));
        Assert.Equal(verified, plain);
        Assert.Contains("\"verified\":false", AnswersJson.Write("x", new Solved(plain), new Renderer()), StringComparison.Ordinal);
    }

    [Fact]
    public void MoreWorkThanTheLimit_IsTooLarge()
    {
        long least = Enumerable.Range(1, 14).Select(i => 1L << i).First(most => With(most) is Solved);
        Assert.True(least > 10);
        Assert.Equal(["too-large"], Ask.Codes(With(least / 2)));

        static SolveResult With(long most) => new Solver(new SolverOptions { Limits = new() { UsesOfRules = most } }).Solve(Triangle);
    }

    [Fact]
    public void ACancelledSolve_Throws()
    {
        using CancellationTokenSource cancelled = new();
        cancelled.Cancel();
        Assert.Throws<OperationCanceledException>(() => new Solver().Solve(Triangle, cancelled.Token));
    }

    [Fact]
    public async Task ASolve_CanBeCancelledOnItsWay()
    {
        string[] points = [.. Enumerable.Range('A', 26).Select(c => ((char)c).ToString())];
        Problem large = Problem.About("solve a triangle").Figure([.. points.Zip(points.Skip(1), points.Skip(2)).SelectMany((t, i) => new[] { $"{t.First}{t.Second}{t.Third} is a triangle", $"{t.First}{t.Third}{points[(i + 9) % 26]} is a triangle" }).Where(s => s[..3].Distinct().Count() == 3)])
            .Given("AB", "7 cm").Given("BC", "8 cm").Given("CA", "9 cm").Find("YZ");
        new Solver().Solve(large, CancellationToken.None);
        Stopwatch watch = Stopwatch.StartNew();
        new Solver().Solve(large, CancellationToken.None);
        TimeSpan whole = watch.Elapsed;
        // A busy machine may solve sooner than it did before, so there is more than one attempt.
        List<bool> cancelled = [];
        for (int i = 0; i < 40 && !cancelled.Contains(true); i++)
        {
            using CancellationTokenSource source = new(whole * (1 + i % 5) / 8);
            cancelled.Add(await Task.Run(() => new Solver().Solve(large, source.Token)).ContinueWith(t => t.IsCanceled || t.Exception?.InnerException is OperationCanceledException, TaskScheduler.Default));
        }

        Assert.Contains(true, cancelled);
    }

    [Fact]
    public void TopicsAndRulesOfOneName_AreAnError()
    {
        Topic again = new(new("solve a triangle"), "");
        Assert.Throws<ArgumentException>(() => Topics.Standard.With(again));
        Topic clash = new(new("clash"), "") { Rules = [AreaRule("sine-rule", wrong: false)] };
        Assert.Throws<ArgumentException>(() => new Solver(new SolverOptions { Topics = Topics.Standard.With(clash) }));
        Assert.Throws<KeyNotFoundException>(() => RuleBook.Standard["no-such-rule"]);
    }

    [Fact]
    public void OneSolver_ServesManyThreads()
    {
        Solver solver = new();
        Solution one = Assert.IsType<Solved>(solver.Solve(Triangle)).Solution;
        Parallel.For(0, 16, _ => Assert.Equal(one, Assert.IsType<Solved>(solver.Solve(Triangle)).Solution));
    }

    /// <summary>16 area² = 2(a²b² + b²c² + c²a²) − (a⁴ + b⁴ + c⁴); the wrong one with 8 for 16.</summary>
    private static Rule AreaRule(string id, bool wrong)
    {
        static Expr Square(string letter) => new Power(new Letter(letter), 2);
        static Expr Fourth(string letter) => new Power(new Letter(letter), 4);
        Expr products = Square("a") * Square("b") + Square("b") * Square("c") + Square("c") * Square("a"), powers = Fourth("a") + Fourth("b") + Fourth("c");
        Items<RolePattern> quantities = [new("t", "area of ABC", false), new("a", "BC", false), new("b", "CA", false), new("c", "AB", false)];
        return new(new(id), ["ABC is a triangle"], null, new(Square("t"), (2 * products - powers) / (wrong ? 8 : 16)), quantities, quantities, "Heron, Metrica; from memory", 2);
    }
}
