namespace Explain.Generators;

/// <summary>A square root.</summary>
internal sealed record RootNode(Node Of) : Node
{
    public override bool IsNumber => Of.IsNumber;

    public override bool IsAngle => false;
}
