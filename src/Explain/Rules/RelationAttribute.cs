namespace Explain;

/// <summary>Declares a relation: an equality of two C# expressions in the parameters, returned as a pair.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class RelationAttribute : Attribute;
