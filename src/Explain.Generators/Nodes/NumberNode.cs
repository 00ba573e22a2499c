namespace Explain.Generators;

/// <summary>A number as typed: 0.5 is 5 over 10, exactly.</summary>
internal sealed record NumberNode(long Numerator, long Denominator, UnitModel Of) : Node
{
    public override UnitModel Unit => Of;

    /// <summary>Whether it is a full or a half turn, which divides an angle into a plain number.</summary>
    public bool IsTurn => this is { Denominator: 1, Numerator: 180 or 360, Of.IsNone: true };

    public override Node? InDegrees() => Of.IsNone ? this with { Of = UnitModel.Degree } : null;
}
