namespace Explain.Cli.Tests;

/// <summary>A solver with a rule that is false, so that what it makes with it fails its verification.</summary>
internal static class FalseRule
{
    private static readonly Items<RolePattern> Quantities = [new("area", "area of ABC", false), new("base", "AB", false), new("side", "BC", false)];

    public static Solver Solver { get; } = new(new SolverOptions
    {
        Rules = RuleBook.Standard.With([new Rule(new("area-as-of-a-rectangle"), ["ABC is a triangle"], null, new(new Letter("area"), (Expr)new Letter("base") * new Letter("side")), Quantities, Quantities, "false on purpose", 1)]),
    });
}
