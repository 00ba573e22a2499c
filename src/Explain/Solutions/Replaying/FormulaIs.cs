namespace Explain;

/// <summary>A calculation goes by another formula, such as a slip makes; later steps follow from its value.</summary>
/// <param name="Step">The calculation.</param>
/// <param name="Formula">The formula, in quantities that are known before the step; what it gives is of the same kind as before.</param>
public sealed record FormulaIs(ClaimId Step, Expr Formula) : Change
{
    internal override ClaimId Claim => Step;
}
