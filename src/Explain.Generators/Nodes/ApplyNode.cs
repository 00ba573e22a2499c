namespace Explain.Generators;

/// <summary>A trigonometric function of an angle in degrees, or an inverse.</summary>
internal sealed record ApplyNode(string Function, Node To) : Node
{
    public override bool IsNumber => To.IsNumber;

    public override bool IsAngle => Function.StartsWith("Arc", StringComparison.Ordinal);
}
