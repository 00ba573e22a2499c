namespace Explain;

/// <summary>Three lengths that make no triangle, or a flat one.</summary>
internal sealed class SidesFault(Problem problem, Ledger ledger)
{
    public ProblemError Of(Items<Symbol> sides)
    {
        Culprits culprits = new(problem, ledger, sides);
        Length longest = (Length)culprits.Spelled(sides.First(s => sides.All(o => ledger.Compare(s, o) >= 0)));
        Symbol[] others = [.. sides.Where(s => s != longest)];
        Expr[] numbers = [.. others.Select(o => Number(ledger.Evaluate(o)!))];
        Value sum = Plain(ledger.Evaluate(new Sum(others[0], others[1]))!);
        bool flat = ledger.Compare(longest, new Sum(others[0], others[1])) == 0;
        Phrase message = flat
            ? ErrorPhrases.FlatTriangle(culprits.Facts, numbers[0], numbers[1], sum, Opposite(longest, others), new Line(longest.From, longest.To))
            : ErrorPhrases.NoTriangle(culprits.Facts, numbers[0], numbers[1], sum, Plain(ledger.Evaluate(longest)!), longest.From, longest.To);
        return new(flat ? ErrorCodes.FlatTriangle : ErrorCodes.NoTriangle, culprits.Lines, 0, message, ErrorPhrases.CheckLengths());
    }

    private static Point Opposite(Length longest, Symbol[] others) =>
        others.OfType<Length>().SelectMany(l => new[] { l.From, l.To }).First(p => p != longest.From && p != longest.To);

    private static Value Plain(Value value) => value with { Unit = Unit.None };

    private static Expr Number(Value value) => Digits.Of(Plain(value));
}
