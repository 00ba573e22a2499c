using static Explain.DegreeTrigonometry;

namespace Explain.Tests.Formulas;

/// <summary>Explained methods as a user would write them.</summary>
public static partial class Gardens
{
    /// <summary>Area of a path of constant width round a circular pond</summary>
    [Explained]
    [return: Symbol("A"), Unit("m²")]
    public static double PathArea([Symbol("r"), Unit("m")] double pondRadius, [Symbol("w"), Unit("m")] double width)
    {
        Require.That(width > 0);                           // the path has a width
        double R = pondRadius + width;                     // the outer edge is a circle, larger by the width of the path
        double whole = Math.PI * R * R;                    // rule: area-of-circle radius=R
        double pond = Math.PI * pondRadius * pondRadius;   // rule: area-of-circle radius=r
        return whole - pond;                               // the path is what remains when the pond is taken away
    }

    /// <summary>Area of a regular bed with n edges</summary>
    [Explained]
    [return: Symbol("A"), Unit("m²")]
    public static double BedArea([Symbol("s"), Unit("m")] double edge, [Symbol("n")] int edges)
    {
        double share = 360.0 / edges;                      // the edges share a full turn
        double height = edge / 2 / Tan(share / 2);         // half an edge is opposite half a share
        return edges * edge * height / 2;                  // that many triangles
    }

    /// <summary>The third side of a triangular bed</summary>
    [Explained]
    [return: Symbol("c"), Unit("m")]
    public static double ThirdSide([Unit("m")] double a, [Unit("m")] double b, [Symbol("C"), Unit("°")] double angle)
    {
        if (angle == 90) return Math.Sqrt(a * a + b * b);  // a right-angled triangle
        return Math.Sqrt(a * a + b * b - 2 * a * b * Cos(angle));   // any other
    }

    /// <summary>The angle of a triangular bed</summary>
    [Explained]
    [return: Symbol("C"), Unit("°")]
    public static double AngleBetween([Unit("m")] double a, [Unit("m")] double b, [Unit("m")] double c)
    {
        Require.That(a + b > c && b + c > a && c + a > b); // two sides together are longer than the third
        return Acos((a * a + b * b - c * c) / (2 * a * b));   // from the three sides
    }

    /// <summary>Ground that a goat reaches at a long straight fence of length f</summary>
    [Explained]
    [return: Symbol("G"), Unit("m²")]
    public static double Grazed([Symbol("t"), Unit("m")] double rope, [Symbol("f"), Unit("m")] double fence)
    {
        double over = rope > fence   // does the rope go round the end?
            ? rope - fence           // the rest of it
            : 0;                     // nothing is left
        double half = 0.5 * Math.PI * Math.Pow(rope, 3) / rope;   // before the fence
        return half + Quarter(over);   // and round the end
    }

    /// <summary>A quarter of a circle</summary>
    [Explained]
    [return: Symbol("Q"), Unit("m²")]
    private static double Quarter([Symbol("q"), Unit("m")] double radius) => Math.PI * radius * radius / 4;   // a quarter of a turn
}
