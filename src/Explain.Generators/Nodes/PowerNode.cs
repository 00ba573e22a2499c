namespace Explain.Generators;

/// <summary>A power with a whole exponent, 2 or more.</summary>
internal sealed record PowerNode(Node Base, int Exponent) : Node
{
    public override bool IsNumber => Base.IsNumber;

    public override bool IsAngle => false;
}
