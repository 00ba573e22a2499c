using Fractions;

namespace Explain;

/// <summary>All values that a measurement may have: from its lower to its upper bound, both included.</summary>
internal sealed record BoxSide(Symbol Of, Fraction Low, Fraction High, Unit Unit)
{
    public bool IsPoint => Low == High;

    public Fraction Width => High - Low;

    public Fraction Middle => (Low + High) / 2;

    public BoxSide At(Fraction value) => this with { Low = value, High = value };
}
