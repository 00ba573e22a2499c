namespace Explain;

/// <summary>
/// A given has any value from one to another, both included. Values are then ranges, and a comparison holds only where it holds for
/// every choice of values.
/// </summary>
/// <param name="Given">The given.</param>
/// <param name="From">The least value: a rational number in a unit of the same kind.</param>
/// <param name="To">The greatest value, not less than the least.</param>
public sealed record GivenWithin(ClaimId Given, Expr From, Expr To) : Change
{
    internal override ClaimId Claim => Given;
}
