namespace Explain;

/// <summary>Givens that cannot hold together: the smallest set of them, and what the others of the set give for one of it.</summary>
/// <param name="Set">The givens of the set, in the order of the problem.</param>
/// <param name="Of">The one that the others contradict: the last where they determine it.</param>
/// <param name="Derived">What the others give for it.</param>
internal sealed record Clash(Items<Given> Set, Given Of, Value Derived)
{
    /// <summary>Above this number of givens the whole set is named: the smallest would take too long to find.</summary>
    private const int MostSearched = 8;

    /// <summary>The smallest set of givens that clash; null when all agree.</summary>
    public static Clash? Find(Consistency consistency, Problem problem)
    {
        Items<Given> all = [.. problem.Given.Where(g => g.Of is Length or Angle or Measure or DistanceToLine)];
        if (Within(consistency, all) is not { } whole) return null;
        if (all.Count > MostSearched) return whole;
        for (int size = 2; size < all.Count; size++)
            foreach (Items<Given> set in Sets(all, size))
                if (Within(consistency, set) is { } smaller) return smaller;
        return whole;
    }

    private static Clash? Within(Consistency consistency, Items<Given> set)
    {
        for (int i = set.Count - 1; i >= 0; i--)
            if (consistency.Derived(set, set[i]) is { } derived) return new(set, set[i], derived);
        return null;
    }

    private static IEnumerable<Items<Given>> Sets(Items<Given> of, int size) => size == 0 ? [[]]
        : Enumerable.Range(0, of.Count - size + 1).SelectMany(first => Sets([.. of.Skip(first + 1)], size - 1).Select(rest => (Items<Given>)[of[first], .. rest]));
}
