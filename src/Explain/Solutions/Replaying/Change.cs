namespace Explain;

/// <summary>
/// A change under which a solution is evaluated again: <see cref="GivenIs"/>, <see cref="GivenWithin"/>, <see cref="ValueIs"/> or
/// <see cref="FormulaIs"/>. Two are equal when their members are.
/// </summary>
public abstract record Change
{
    private protected Change()
    {
    }

    /// <summary>The claim that is changed.</summary>
    internal abstract ClaimId Claim { get; }
}
