namespace Explain.Tests.Placing;

internal static class Drawn
{
    public static Polygon Triangle { get; } = new([new("A"), new("B"), new("C")]);

    public static Symbol Of(string quantity) => QuantityGrammar.Read(quantity)!;

    public static Problem Problem(string figure, (string Of, string Is)[] given) => new()
    {
        Figure = [.. figure.Split("; ").Select(f => new FigureStatement(StatementGrammar.Read(f)!, default))],
        Given = [.. given.Select(Given)],
    };

    private static Given Given((string Of, string Is) given) => ValueReader.TryRead(given.Is, out GivenValue? value, out _)
        ? new(Of(given.Of), value!.Is, value.Within, given.Is, default) : throw new ArgumentException(given.Is);

    public static Items<Layout> Layouts(string figure, params (string Of, string Is)[] given) =>
        new FigureModel().Layouts(Problem(figure, given), 192)!.Value;
}
