namespace Explain;

/// <summary>A step has a value of somebody's own, wrong or rounded too early; later steps follow from it.</summary>
/// <param name="Step">The step: a calculation or a line of algebra.</param>
/// <param name="Value">Its value, exact, in a unit of the same kind.</param>
public sealed record ValueIs(ClaimId Step, Value Value) : Change
{
    internal override ClaimId Claim => Step;

    internal Quantity Number => new(Value.Exact!, Value.Unit);
}
