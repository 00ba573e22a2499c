namespace Explain.Generators;

/// <summary>Says where the units of a formula do not go together.</summary>
internal static class UnitChecks
{
    /// <summary>What is wrong with the outermost operation; null when nothing is, or when a unit is not known.</summary>
    public static string? Fault(Node node) => node switch
    {
        BinaryNode { Unit: null, Left.Unit: { } left, Right.Unit: { } right } b => b.Sign switch
        {
            '*' when left.IsAngle != right.IsAngle => $"multiplies {left} by {right}; divide the angle by 360 or 180 first, so that it is a part of a turn",
            '*' => $"multiplies {left} by {right}; convert one of them first",
            '/' => $"divides {left} by {right}, which is no kind of quantity here",
            _ => Apart(left, right),
        },
        PowerNode { Unit: null, Base.Unit: { } of } => $"is a power of {of}, which is no kind of quantity here",
        RootNode { Unit: null, Of.Unit: { } of } => $"is a square root of {of}, which is no kind of quantity here",
        ApplyNode { IsInverse: true, To.Unit: { IsNone: false } of } => $"takes a plain number, but gets {of}",
        ApplyNode { IsInverse: false, To.Unit: { } of } when of != UnitModel.Degree => $"takes an angle in °, but gets {of}; mark the parameter [Unit(\"°\")]",
        _ => null,
    };

    /// <summary>Why two formulas cannot be added or compared.</summary>
    public static string Apart(UnitModel left, UnitModel right) => $"puts {left} and {right} together; only quantities of one unit can be added or compared";
}
