namespace Explain.Generators;

/// <summary>A number as typed: 0.5 is 5 over 10, exactly.</summary>
internal sealed record NumberNode(long Numerator, long Denominator, bool Degrees = false) : Node
{
    public override bool IsNumber => true;

    public override bool IsAngle => Degrees;

    public override Node InDegrees() => this with { Degrees = true };
}
