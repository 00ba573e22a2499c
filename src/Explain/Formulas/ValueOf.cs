namespace Explain;

/// <summary>The value of a premise or an earlier step. Numbers of the problem are always written so, never as digits.</summary>
/// <param name="Claim">The claim whose value is meant.</param>
public sealed record ValueOf(ClaimId Claim) : Expr;
