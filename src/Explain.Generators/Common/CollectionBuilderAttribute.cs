namespace System.Runtime.CompilerServices;

/// <summary>What the compiler asks for in order to build a type of ours from a collection expression.</summary>
[AttributeUsage(AttributeTargets.Class | AttributeTargets.Struct | AttributeTargets.Interface)]
internal sealed class CollectionBuilderAttribute(Type builderType, string methodName) : Attribute
{
    public Type BuilderType { get; } = builderType;

    public string MethodName { get; } = methodName;
}
