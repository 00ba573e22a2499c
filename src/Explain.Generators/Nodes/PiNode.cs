namespace Explain.Generators;

/// <summary>The number π.</summary>
internal sealed record PiNode : Node
{
    public override UnitModel Unit => UnitModel.None;
}
