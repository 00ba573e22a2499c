namespace Explain;

/// <summary>The search for both extremes of a formula without units. Measurements that occur only in one sum are searched as that sum.</summary>
internal sealed class Search
{
    private readonly List<Combination> combinations = [];
    private readonly BoxCount count = new();
    private readonly Landscape landscape;
    private readonly Items<BoxSide> sides;
    private readonly Covering covering;

    public Search(Expr formula, Items<BoxSide> sides, Interner interner)
    {
        while (Combination.In(formula, sides) is var (found, rest))
        {
            combinations.Add(found);
            (formula, sides) = (interner.KeepAll(rest), found.With(sides));
        }

        (landscape, this.sides, covering) = (new(formula, interner), sides, new(sides, count));
    }

    /// <summary>How many boxes were examined.</summary>
    public int Boxes => count.Examined;

    /// <summary>A part of the formula that may have no value somewhere in the box.</summary>
    public Expr? Fault() => covering.Fault(landscape.Formula);

    public Items<Trend> Trends() => [.. sides.Where(s => !s.IsPoint)
        .Select(s => new Trend(s.Of, covering.Direction(landscape.First(s.Of))))
        .SelectMany(t => Separate([t], (c, all) => all.SelectMany(c.Separate)))];

    public Items<Spot>? Least() => Separate(new LeastSearch(landscape, sides, count).Find());

    public Items<Spot>? Greatest() => Separate(new LeastSearch(landscape.Upside, sides, count).Find());

    private Items<Spot>? Separate(Items<Spot>? spots) => spots is null ? null
        : [.. spots.Value.Select(s => s with { Place = [.. Separate(s.Place, (c, all) => all.SelectMany(c.Separate))] })];

    private IEnumerable<T> Separate<T>(IEnumerable<T> all, Func<Combination, IEnumerable<T>, IEnumerable<T>> by) =>
        combinations.AsEnumerable().Reverse().Aggregate(all, (left, combination) => by(combination, left));
}
