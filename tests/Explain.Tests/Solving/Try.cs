namespace Explain.Tests.Solving;
public sealed class Try
{
    [Theory]
    [InlineData("03-baseline-and-two-angles")]
    [InlineData("07-two-triangles")]
    public void Page(string name)
    {
        string text = File.ReadAllText("/work/shared/examples/" + name + ".yaml").Replace("  d: distance from T to PQ by scale drawing\n","").Replace("  d: Use a scale drawing to find the distance in (b).\n","");
        var p = Problem.Read(text, name + ".yaml");
        var r = new Solver().Solve(p);
        if (r is Refused f) Assert.Fail(string.Join("\n", f.Errors.Select(e => e.Code + " " + string.Join(",", e.Lines) + new Renderer(English.UnitedKingdom).Say(e))));
        foreach (var o in new[]{Output.Markdown, Output.Latex}) foreach (var e in new[]{English.UnitedKingdom, English.UnitedStates}) File.WriteAllText($"/tmp/out-{name}-{e}.{(o==Output.Markdown?"md":"tex")}", new Renderer(e).Render(((Solved)r).Solution, Form.WorkedSolution, o));
    }
}
