namespace Explain;

/// <summary>The unit of a parameter or a result; it fixes the kind of quantity.</summary>
/// <param name="unit">A unit of the unit table, such as m, m² or °.</param>
[AttributeUsage(AttributeTargets.Parameter | AttributeTargets.ReturnValue)]
public sealed class UnitAttribute(string unit) : Attribute
{
    /// <summary>The unit.</summary>
    public string Unit { get; } = unit;
}
