namespace Explain;

/// <summary>Finds the cheapest way to each quantity (Knuth's order on hyperedges), and puts the steps in order.</summary>
internal sealed class Routes
{
    private readonly Dictionary<Symbol, (double Cost, Edge? By)> best = [];

    /// <param name="known">What is known, and what it costs to lean on it: a little more for what was itself calculated.</param>
    /// <param name="edges">The ways.</param>
    public Routes(IEnumerable<(Symbol Symbol, double Cost)> known, Items<Edge> edges)
    {
        PriorityQueue<(Symbol, Edge?), (double, int)> queue = new();
        int order = 0;
        foreach ((Symbol symbol, double cost) in known) queue.Enqueue((symbol, null), (cost, ++order));
        foreach (Edge edge in edges.Where(e => e.Inputs.Count == 0)) queue.Enqueue((edge.Target, edge), (edge.Cost, ++order));
        while (queue.TryDequeue(out (Symbol Symbol, Edge? By) next, out (double Cost, int) key))
        {
            if (!best.TryAdd(next.Symbol, (key.Cost, next.By))) continue;
            foreach (Edge edge in edges.Where(e => e.Inputs.Contains(next.Symbol) && e.Inputs.All(best.ContainsKey) && !best.ContainsKey(e.Target)))
                queue.Enqueue((edge.Target, edge), (edge.Cost + edge.Inputs.Sum(i => best[i].Cost), ++order));
        }
    }

    public bool Reaches(Symbol symbol) => best.ContainsKey(symbol);

    public double CostOf(Symbol symbol) => best[symbol].Cost;

    /// <summary>The steps to a quantity, each after those it needs; none that an earlier call has given.</summary>
    public IEnumerable<Edge> To(Symbol symbol, HashSet<Symbol> done)
    {
        if (!done.Add(symbol) || best[symbol].By is not { } edge) yield break;
        foreach (Symbol input in edge.Inputs)
            foreach (Edge earlier in To(input, done)) yield return earlier;
        yield return edge;
    }
}
