namespace Explain;

/// <summary>A given has another value: a variant, a measurement read off a drawing.</summary>
/// <param name="Given">The given.</param>
/// <param name="Value">Its value: a formula of numbers, or of numbers and letters, in a unit of the same kind.</param>
public sealed record GivenIs(ClaimId Given, Expr Value) : Change
{
    internal override ClaimId Claim => Given;
}
