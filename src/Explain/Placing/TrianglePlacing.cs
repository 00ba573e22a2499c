using Fractions;

namespace Explain;

/// <summary>Puts the first corner at the origin and the second on the axis, and finds the third by circles and rays.</summary>
internal sealed class TrianglePlacing(TriangleParameters known, int bits)
{
    private Enclosure Zero => Enclosure.Of(Fraction.Zero, bits);

    /// <summary>Every place of the three corners; null when three givens that fix a triangle are not there.</summary>
    public Items<Items<Placed>>? Corners()
    {
        Point[][] orders = [.. known.Triangle.Corners.SelectMany(p => known.Triangle.Corners.Where(q => q != p).Select(q =>
            (Point[])[p, q, known.Triangle.Corners.First(r => r != p && r != q)]))];
        foreach (Func<Point, Point, Point, Items<Items<Placed>>?> way in new[] { ThreeSides, AngleBetween, TwoAngles, Mirrored, AngleNotBetween })
            foreach (Point[] o in orders)
                if (way(o[0], o[1], o[2]) is { } found) return found;
        return null;
    }

    private Items<Items<Placed>>? ThreeSides(Point p, Point q, Point r)
    {
        if (Number(known.Side(p, q)) is not { } pq || Number(known.Side(p, r)) is not { } pr || Number(known.Side(q, r)) is not { } qr) return null;
        Enclosure along = Enclosure.Divide(Square(pq) + Square(pr) - Square(qr), pq * 2)!.Value;
        Enclosure height = Square(pr) - Square(along);
        return height.Sign > 0 ? [Three(p, q, r, pq, new(along, Enclosure.Sqrt(height)!.Value))] : [];
    }

    private Items<Items<Placed>>? AngleBetween(Point p, Point q, Point r)
    {
        if (Number(known.Side(p, q)) is not { } pq || Number(known.Side(p, r)) is not { } pr || Number(known.AngleAt(p)) is not { } angle) return null;
        return IsAngle(angle) ? [Three(p, q, r, pq, Direction(angle) * pr)] : [];
    }

    private Items<Items<Placed>>? TwoAngles(Point p, Point q, Point r)
    {
        if (Number(known.Side(p, q)) is not { } pq || Number(known.AngleAt(p)) is not { } atP || Number(known.AngleAt(q)) is not { } atQ) return null;
        if (!IsAngle(atP) || !IsAngle(atQ) || !IsAngle(atP + atQ)) return [];
        Vector fromP = Direction(atP), fromQ = Direction(Enclosure.Of(180, bits) - atQ);
        Vector side = new(pq, Zero);
        Enclosure reach = Enclosure.Divide(Vector.Cross(side, fromQ), Vector.Cross(fromP, fromQ))!.Value;
        return [Three(p, q, r, pq, fromP * reach)];
    }

    /// <summary>Two equal sides or two equal angles: p stands over the middle of qr, in a direction that an angle gives.</summary>
    private Items<Items<Placed>>? Mirrored(Point p, Point q, Point r)
    {
        if (!known.AreEqual(new Length(p, q), new Length(p, r)) && !known.AreEqual(new Angle(p, q, r), new Angle(p, r, q))) return null;
        if (Number(known.AngleAt(q) ?? known.AngleAt(r)) is { } atBase) return Mirrored(p, q, r, Direction(atBase));
        if (Number(known.AngleAt(p)) is not { } apex) return null;
        Vector half = Direction(apex * new Fraction(1, 2));
        return Mirrored(p, q, r, new(half.Y, half.X));
    }

    private Items<Items<Placed>>? Mirrored(Point p, Point q, Point r, Vector direction)
    {
        if (direction.X.Sign is not > 0 || direction.Y.Sign is not > 0) return [];
        Enclosure? side = Number(known.Side(q, r)) is { } whole ? Enclosure.Divide(whole * new Fraction(1, 2), direction.X) : Number(known.Side(p, q) ?? known.Side(p, r));
        return side is { } length ? [Three(q, r, p, direction.X * length * 2, direction * length)] : null;
    }

    private Items<Items<Placed>>? AngleNotBetween(Point p, Point q, Point r)
    {
        if (known.Side(p, r) is not { } beside || known.Side(q, r) is not { } opposite || known.AngleAt(p) is not { } at) return null;
        if (Number(beside) is not { } pr || Number(opposite) is not { } qr || Number(at) is not { } angle || !IsAngle(angle)) return [];
        Vector third = Direction(angle) * pr;
        Expr rest = new Difference(new Power(opposite, 2), new Power(new Product(beside, new Apply(Function.Sine, at)), 2));
        int sign = Evaluator.Sign(rest) ?? 0;
        if (sign < 0) return [];
        Enclosure half = sign == 0 ? Zero : Enclosure.Sqrt(Square(qr) - Square(third.Y)) ?? Zero;
        Enclosure[] roots = sign == 0 ? [third.X] : [third.X + half, third.X - half];
        return [.. roots.Where(x => x.Sign > 0).Select(x => Three(p, q, r, x, third))];
    }

    private Items<Placed> Three(Point p, Point q, Point r, Enclosure pq, Vector third) =>
        [new(p, new(Zero, Zero), known.IsShapeOnly), new(q, new(pq, Zero), known.IsShapeOnly), new(r, third, known.IsShapeOnly)];

    private static Vector Direction(Enclosure degrees) => new(Trigonometry.Cos(degrees), Trigonometry.Sin(degrees));

    private static Enclosure Square(Enclosure of) => Enclosure.Power(of, 2);

    private Enclosure? Number(Expr? value) => value is null ? null : GivenNumbers.Of(value, bits);

    private bool IsAngle(Enclosure degrees) => degrees.Sign > 0 && (Enclosure.Of(180, bits) - degrees).Sign > 0;
}
