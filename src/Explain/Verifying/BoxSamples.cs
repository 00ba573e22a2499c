using Fractions;

namespace Explain;

/// <summary>Figures drawn afresh with the measurements at the corners of their box and at points inside it.</summary>
internal sealed class BoxSamples(Solution solution, IIndependentModel model, int bits)
{
    /// <summary>The most measurements whose corners are all tried; more are moved together.</summary>
    private const int Most = 6;

    private static readonly Items<Fraction> Inside = [new(1, 3), new(-2, 5), new(4, 7), new(-5, 6)];

    private readonly Items<Given> measured = [.. solution.Of.Given.Where(g => WithinOf(solution, g) is not null)];

    private Items<Items<Layout>>? drawn;

    /// <summary>The figures of each sample; none where it cannot be drawn.</summary>
    private Items<Items<Layout>> Drawn => drawn ??= [.. Moves().Select(move => model.Layouts(Moved(move), bits) ?? [])];

    /// <summary>Whether the quantity stays between bounds in every sample; one pair of bounds for each figure that fits.</summary>
    public bool Stays(Symbol quantity, Items<Bounds> bounds) => Drawn.All(figures => figures.Count > 0
        && figures.All(layout => layout.Measure(quantity) is { } found && bounds.Any(b => IsWithin(found, b))));

    private static Expr? WithinOf(Solution solution, Given given) =>
        solution.Premises.FirstOrDefault(p => p.Says == Compare.Equal(given.Of, given.Value))?.Within;

    private bool IsWithin(Enclosure found, Bounds bounds) =>
        Enclosure.Less(found, GivenNumbers.In(bounds.Lower, bits)) != true && Enclosure.Less(GivenNumbers.In(bounds.Upper, bits), found) != true;

    /// <summary>How far each measurement is moved, in parts of its tolerance.</summary>
    private IEnumerable<Items<Fraction>> Moves()
    {
        for (int corner = 0; corner < 1 << int.Min(measured.Count, Most); corner++)
            yield return [.. measured.Select((_, i) => (corner >> (i % Most) & 1) == 0 ? Fraction.MinusOne : Fraction.One)];
        for (int start = 0; start < Inside.Count; start++)
            yield return [.. measured.Select((_, i) => Inside[(start + i) % Inside.Count])];
    }

    private Problem Moved(Items<Fraction> by)
    {
        Dictionary<Symbol, Given> moved = measured.Select((g, i) => g with { Value = At(g, by[i]) }).ToDictionary(g => g.Of);
        return solution.Of with { Given = [.. solution.Of.Given.Select(g => moved.GetValueOrDefault(g.Of, g))] };
    }

    private Expr At(Given given, Fraction by) => new Sum(given.Value, new Product(new Quantity(Exact.Of(by), Unit.None), WithinOf(solution, given)!));
}
