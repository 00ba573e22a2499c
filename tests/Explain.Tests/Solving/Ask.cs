namespace Explain.Tests.Solving;

/// <summary>Asks the solver about one triangle.</summary>
internal static class Ask
{
    public static SolveResult Triangle(IEnumerable<(string Of, string Value)> given, params string[] find) => Text("solve a triangle", "ABC is a triangle", given, find);

    public static SolveResult Text(string topic, string figure, IEnumerable<(string Of, string Value)> given, params string[] find) => new Solver().Solve(Problem.Read(
        $"topic: {topic}\nfigure: {figure}\ngiven:\n{string.Concat(given.Select(g => $"  {g.Of}: {g.Value}\n"))}find: [{string.Join(", ", find)}]\n", "asked.yaml"));

    public static string[] Codes(SolveResult result) => result is Refused refused ? [.. refused.Errors.Select(e => e.Code)] : [];

    public static double[] Values(SolveResult result, string find) =>
        [.. ((Solved)result).Solution.Parts.SelectMany(p => p.Answers).First(a => a.For.AsTyped == find).Values.Select(v => v.Value!.Number)];
}
