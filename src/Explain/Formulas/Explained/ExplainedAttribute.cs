namespace Explain;

/// <summary>Asks for the explained twin of a plain method: the same value, with its steps. The method stays untouched.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class ExplainedAttribute : Attribute;
