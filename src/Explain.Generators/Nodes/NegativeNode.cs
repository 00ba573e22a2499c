namespace Explain.Generators;

/// <summary>The negative of a formula.</summary>
internal sealed record NegativeNode(Node Of) : Node
{
    public override bool IsNumber => Of.IsNumber;

    public override bool IsAngle => Of.IsAngle;

    public override Node InDegrees() => new NegativeNode(Of.InDegrees());
}
