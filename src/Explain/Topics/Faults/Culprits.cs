namespace Explain;

/// <summary>What states some quantities of a problem: the givens that an error names, and the lines that they stand on.</summary>
internal sealed class Culprits
{
    private readonly Problem problem;
    private readonly Ledger ledger;
    private readonly Items<Symbol> of;

    public Culprits(Problem problem, Ledger ledger, params Items<Symbol> of) => (this.problem, this.ledger, this.of) = (problem, ledger, of);

    /// <summary>The givens, in the order of the problem.</summary>
    public Items<Given> Givens => [.. problem.Given.Where(g => of.Any(s => IsOf(g, s)))];

    /// <summary>What they say, and last what the figure says of quantities that are not given.</summary>
    public Items<Statement> Facts =>
        [.. Givens.Select(Fact), .. of.Where(s => !problem.Given.Any(g => IsOf(g, s))).Select(s => (Statement)Compare.Equal(s, Digits.Of(ledger.Evaluate(s)!)))];

    public Items<int> Lines => LinesOf(Givens.Select(g => g.At));

    public static Statement Fact(Given given) => Compare.Equal(given.Of, given.Value);

    /// <summary>The quantity as the problem spells it.</summary>
    public Symbol Spelled(Symbol symbol) => problem.Given.FirstOrDefault(g => IsOf(g, symbol))?.Of ?? symbol;

    /// <summary>The others as an error names them: by their lines in a file, by what they say in a program.</summary>
    public static Phrase Named(IEnumerable<Given> others)
    {
        Given[] all = [.. others];
        Items<int> lines = LinesOf(all.Select(g => g.At));
        return lines.Count > 0 ? ErrorPhrases.OnLines(lines) : ErrorPhrases.OnFacts([.. all.Select(Fact)]);
    }

    public static Items<int> LinesOf(IEnumerable<Position> places) => [.. places.Select(p => p.Line).Where(l => l > 0).Distinct().Order()];

    private bool IsOf(Given given, Symbol symbol) => ledger.Arrangement.Canonical(given.Of) == ledger.Arrangement.Canonical(symbol);
}
