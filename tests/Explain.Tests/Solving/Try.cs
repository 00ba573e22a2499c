namespace Explain.Tests.Solving;
public sealed class Try
{
    internal static Given G(string of, string value) { ValueReader.TryRead(value, out var v, out _); return new(QuantityGrammar.Read(of)!, v!.Is, v!.Within, value, default); }
    internal static Problem P(string topic, string figure, (string, string)[] given, params string[] find) => new()
    {
        Topic = new(topic), File = "try.yaml", Title = "A try", Question = "What is asked.",
        Figure = [.. figure.Split(';').Select(f => new FigureStatement(StatementGrammar.Read(f)!, default))],
        Given = [.. given.Select(g => G(g.Item1, g.Item2))],
        Find = [.. find.Select(f => new Goal(f, QuantityGrammar.Read(f)!, GoalKind.Value))],
    };
    [Theory]
    [InlineData("inaccessible distance")]
    [InlineData("solve a triangle")]
    public void Page(string topic)
    {
        var p = topic[0] == 'i' ? P(topic, "PQT is a triangle", [("PQ", "120 m"), ("angle QPT", "62°"), ("angle PQT", "71°")], "PT", "QT", "distance from T to PQ")
          : P(topic, "ABC is a triangle", [("angle BAC", "38°"), ("AC", "2.5 m"), ("CB", "1.8 m")], "AB", "angle ABC");
        var r = new Solver().Solve(p);
        if (r is Refused f) Assert.Fail(string.Join("\n", f.Errors.Select(e => e.Code + " " + new Renderer(English.UnitedKingdom).Say(e))));
        Assert.Fail(new Renderer(English.UnitedKingdom).Render(((Solved)r).Solution, Form.WorkedSolution, Output.Markdown));
    }
}
