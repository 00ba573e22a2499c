namespace Explain;

/// <summary>The quantity of the figure that a parameter of a relation stands for, over the pattern points of its rule.</summary>
/// <param name="pattern">In the grammar of problem files: <c>BC</c>, <c>angle BAC</c>.</param>
[AttributeUsage(AttributeTargets.Parameter)]
public sealed class QuantityAttribute(string pattern) : Attribute
{
    /// <summary>The pattern.</summary>
    public string Pattern { get; } = pattern;
}
