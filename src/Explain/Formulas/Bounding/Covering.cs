namespace Explain;

/// <summary>Proves what holds all over a box, by enclosures over smaller and smaller boxes.</summary>
internal sealed class Covering(Items<BoxSide> box, BoxCount count)
{
    private const int MostForDomain = 2000;
    private const int MostForDirection = 400;

    /// <summary>A part of the formula that may have no value somewhere in the box; null when it has one everywhere.</summary>
    public Expr? Fault(Expr formula)
    {
        Expr? fault = null;
        bool covered = Try(MostForDomain, next =>
        {
            OverBox over = new(next);
            bool holds = over.Of(formula) is not null;
            fault = over.Fault;
            return holds ? true : next.All(s => s.IsPoint) ? false : null;
        });
        return covered ? null : fault;
    }

    /// <summary>The direction that the sign of a derivative proves.</summary>
    public Direction Direction(Expr derivative)
    {
        Direction all = At(derivative, box, s => s.Middle);
        if (all == Explain.Direction.Neither) return all;
        return Try(MostForDirection, next => new OverBox(next).Of(derivative) is { } slope && Agrees(slope, all) ? true
            : Against(At(derivative, next, s => s.Low), all) || Against(At(derivative, next, s => s.High), all) ? false : null) ? all : Explain.Direction.Neither;
    }

    /// <summary>1 or −1 when the formula is positive or negative everywhere in the box; null when that is not seen.</summary>
    public int? Sign(Expr formula)
    {
        if (At(formula, box, s => s.Middle) is var all && all == Explain.Direction.Neither) return null;
        int sign = all == Explain.Direction.Rises ? 1 : -1;
        return Try(MostForDomain, next => new OverBox(next).Of(formula)?.Sign switch
        {
            1 => sign == 1,
            -1 => sign == -1,
            0 => false,
            _ => null,
        }) ? sign : null;
    }

    /// <summary>Whether a test holds for pieces that cover the box. Where it says neither yes nor no, the piece is halved.</summary>
    private bool Try(int most, Func<Items<BoxSide>, bool?> test)
    {
        Queue<Items<BoxSide>> open = new([box]);
        for (int examined = 0; open.TryDequeue(out Items<BoxSide> next); examined++)
        {
            count.Add();
            bool? holds = test(next);
            if (holds == true) continue;
            if (holds == false || examined >= most || next.All(s => s.IsPoint)) return false;
            (Items<BoxSide> lower, Items<BoxSide> upper) = Halving.Halves(next, box);
            open.Enqueue(lower);
            open.Enqueue(upper);
        }

        return true;
    }

    private static bool Agrees(Enclosure slope, Direction direction) =>
        direction == Explain.Direction.Rises ? slope.LowUnits.Sign >= 0 : slope.HighUnits.Sign <= 0;

    private static bool Against(Direction here, Direction all) => here != Explain.Direction.Neither && here != all;

    private static Direction At(Expr derivative, Items<BoxSide> box, Func<BoxSide, Fractions.Fraction> where) =>
        new OverBox(box.Select(s => s.At(where(s)))).Of(derivative)?.Sign switch
        {
            1 => Explain.Direction.Rises,
            -1 => Explain.Direction.Falls,
            _ => Explain.Direction.Neither,
        };
}
