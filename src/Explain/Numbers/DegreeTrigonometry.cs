namespace Explain;

/// <summary>
/// Sine and friends of plain numbers in degrees, for callers who calculate with them; nothing that is printed rests on it.
/// Angles are reduced exactly before anything is rounded, and the values that are whole or half are exact: the sine of 30 is 0.5.
/// Like System.Math, these give NaN for what has no value.
/// </summary>
public static class DegreeTrigonometry
{
    private const double RadiansInDegree = Math.PI / 180;

    /// <summary>The sine of an angle in degrees.</summary>
    public static double Sin(double degrees)
    {
        var turned = Math.IEEERemainder(degrees, 360);
        var size = Math.Abs(turned);
        var sine = Acute(size > 90 ? 180 - size : size);
        return turned < 0 ? -sine : sine;
    }

    /// <summary>The cosine of an angle in degrees.</summary>
    public static double Cos(double degrees)
    {
        var size = Math.Abs(Math.IEEERemainder(degrees, 360));
        return size > 90 ? -AcuteCosine(180 - size) : AcuteCosine(size);
    }

    /// <summary>The tangent of an angle in degrees; infinite at 90 and every half turn from there.</summary>
    public static double Tan(double degrees)
    {
        var turned = Math.IEEERemainder(degrees, 180);
        var size = Math.Abs(turned);
        var tangent = size switch
        {
            90 => double.PositiveInfinity,
            45 => 1,
            > 45 => 1 / Math.Tan((90 - size) * RadiansInDegree),
            _ => Math.Tan(size * RadiansInDegree),
        };
        return turned < 0 ? -tangent : tangent;
    }

    /// <summary>The angle from −90 to 90 degrees with this sine; NaN outside −1 to 1.</summary>
    public static double Asin(double sine) => Math.Abs(sine) switch
    {
        0.5 => 30 * Math.Sign(sine),
        1 => 90 * Math.Sign(sine),
        _ => Math.Asin(sine) / RadiansInDegree,
    };

    /// <summary>The angle from 0 to 180 degrees with this cosine; NaN outside −1 to 1.</summary>
    public static double Acos(double cosine) => cosine switch
    {
        0 => 90,
        0.5 => 60,
        -0.5 => 120,
        -1 => 180,
        _ => Math.Acos(cosine) / RadiansInDegree,
    };

    /// <summary>The angle between −90 and 90 degrees with this tangent.</summary>
    public static double Atan(double tangent) => Math.Abs(tangent) switch
    {
        1 => 45 * Math.Sign(tangent),
        _ => Math.Atan(tangent) / RadiansInDegree,
    };

    // Above 45° the other function of the complement, which is exact, loses nothing.
    private static double Acute(double degrees) => degrees switch
    {
        30 => 0.5,
        > 45 => Math.Cos((90 - degrees) * RadiansInDegree),
        _ => Math.Sin(degrees * RadiansInDegree),
    };

    private static double AcuteCosine(double degrees) => degrees switch
    {
        60 => 0.5,
        > 45 => Math.Sin((90 - degrees) * RadiansInDegree),
        _ => Math.Cos(degrees * RadiansInDegree),
    };
}
