namespace Explain.Generators;

/// <summary>The number π.</summary>
internal sealed record PiNode : Node
{
    public override bool IsNumber => true;

    public override bool IsAngle => false;
}
