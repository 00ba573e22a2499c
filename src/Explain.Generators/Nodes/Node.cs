namespace Explain.Generators;

/// <summary>A formula as read from C#, in the order in which C# calculates it.</summary>
internal abstract record Node
{
    /// <summary>Whether it is calculated from numbers alone.</summary>
    public abstract bool IsNumber { get; }

    /// <summary>Whether it is a number of degrees, by what it is made of.</summary>
    public abstract bool IsAngle { get; }

    /// <summary>The same with its plain numbers taken as degrees, where it is calculated from numbers alone.</summary>
    public virtual Node InDegrees() => this;

    /// <summary>Two formulas that are added or compared: plain numbers beside an angle are degrees.</summary>
    public static (Node Left, Node Right) Alike(Node left, Node right) =>
        left.IsAngle && right is { IsNumber: true, IsAngle: false } ? (left, right.InDegrees())
        : right.IsAngle && left is { IsNumber: true, IsAngle: false } ? (left.InDegrees(), right)
        : (left, right);
}
