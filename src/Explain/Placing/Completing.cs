using Fractions;

namespace Explain;

/// <summary>
/// Places a triangle of which an area, a perimeter, a height or the radius of a circle is given. A shape of which only the size is open is drawn
/// with a side of 1 m, measured and enlarged; otherwise what follows is added until three measurements place the corners, and where a sine leaves
/// two angles open both are followed. Whatever is drawn is measured afterwards, so a wrong triangle does not pass.
/// </summary>
internal sealed class Completing(int bits)
{
    /// <summary>Every place of the corners; null when what is known fixes no triangle, or not by these means.</summary>
    public Items<Items<Placed>>? Corners(TriangleParameters known)
    {
        if (new TrianglePlacing(known, bits).Corners() is { } placed) return placed;
        if (Enlarged(known) is { } enlarged) return enlarged;
        if (new Consequences(known).First() is not var (of, values)) return null;
        Items<Items<Placed>>?[] branches = [.. values.Select(v => Corners(known.With(of, v)))];
        return branches.Any(b => b is null) ? null : [.. branches.SelectMany(b => b!.Value)];
    }

    private Items<Items<Placed>>? Enlarged(TriangleParameters known)
    {
        if (known.Triangle.Corners is not [var a, var b, ..] || known.HasSide || known.Size is not var (measured, value)) return null;
        if (new TrianglePlacing(known.With(new Length(a, b), new Quantity(Exact.Of(1), Unit.Metre)), bits).Corners() is not { } shapes) return null;
        return [.. shapes.Select(s => Enlarged(s, measured, value)).OfType<Items<Placed>>()];
    }

    private Items<Placed>? Enlarged(Items<Placed> shape, Symbol measured, Expr value)
    {
        if (GivenNumbers.Of(value, bits) is not { } wanted || new Layout(shape).Measure(measured) is not { } found || Enclosure.Divide(wanted, found) is not { } ratio) return null;
        return (measured is Measure { Kind: MeasureKind.Area } ? Enclosure.Sqrt(ratio) : ratio) is { } scale
            ? [.. shape.Select(p => p with { At = p.At * scale })] : null;
    }
}
