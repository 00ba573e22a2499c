namespace Explain;

/// <summary>
/// Trigonometry of degrees in doubles, for callers' own formulas: exact at the angles whose values are ½, 1 and the like.
/// It lies on no path to a printed digit.
/// </summary>
public static class DegreeTrigonometry
{
    /// <summary>The sine of an angle in degrees.</summary>
    public static double Sin(double degrees)
    {
        double turned = Math.IEEERemainder(degrees, 360);
        if (turned > 90) turned = 180 - turned;
        else if (turned < -90) turned = -180 - turned;
        return Math.Abs(turned) switch
        {
            30 => Math.CopySign(0.5, turned),
            90 => Math.CopySign(1, turned),
            > 45 and var a => Math.CopySign(Math.Cos((90 - a) * (Math.PI / 180)), turned),
            _ => Math.Sin(turned * (Math.PI / 180)),
        };
    }

    /// <summary>The cosine of an angle in degrees.</summary>
    public static double Cos(double degrees)
    {
        double turned = Math.Abs(Math.IEEERemainder(degrees, 360));
        return turned > 90 ? -Sin(turned - 90) : Sin(90 - turned);
    }

    /// <summary>The tangent of an angle in degrees; infinite at 90° and every half turn from there.</summary>
    public static double Tan(double degrees)
    {
        double turned = Math.IEEERemainder(degrees, 180);
        return Math.Abs(turned) == 45 ? Math.CopySign(1, turned) : Sin(turned) / Cos(turned);
    }

    /// <summary>The angle from −90° to 90° with this sine; not a number beyond −1 and 1.</summary>
    public static double Asin(double sine) => Math.Abs(sine) == 0.5 ? Math.CopySign(30, sine) : Math.Asin(sine) * (180 / Math.PI);

    /// <summary>The angle from 0° to 180° with this cosine; not a number beyond −1 and 1.</summary>
    public static double Acos(double cosine) => 90 - Asin(cosine);

    /// <summary>The angle from −90° to 90° with this tangent.</summary>
    public static double Atan(double tangent) => Math.Abs(tangent) == 1 ? Math.CopySign(45, tangent) : Math.Atan(tangent) * (180 / Math.PI);
}
