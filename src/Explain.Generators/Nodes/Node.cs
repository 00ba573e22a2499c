namespace Explain.Generators;

/// <summary>A formula as read from C#, in the order in which C# calculates it.</summary>
internal abstract record Node
{
    /// <summary>Its unit; null where that is not known.</summary>
    public abstract UnitModel? Unit { get; }

    public bool IsAngle => Unit is { IsAngle: true };

    /// <summary>The symbols in it.</summary>
    public virtual IEnumerable<LetterNode> Letters => [];

    /// <summary>The same with a plain number in it taken as degrees, so that the whole is an angle; null where that cannot be.</summary>
    public virtual Node? InDegrees() => null;

    /// <summary>Two formulas that are added or compared: beside an angle plain numbers are degrees, and 0 has any unit.</summary>
    public static (Node Left, Node Right) Alike(Node left, Node right) => (Fit(left, right.Unit), Fit(right, left.Unit));

    /// <summary>A formula that must have a unit: plain numbers in it are made to fit where they can.</summary>
    public static Node Fit(Node node, UnitModel? unit) =>
        unit is null || node.Unit is not { IsNone: true } ? node
        : node is NumberNode { Numerator: 0 } zero ? zero with { Of = unit }
        : unit == UnitModel.Degree ? node.InDegrees() ?? node
        : node;
}
