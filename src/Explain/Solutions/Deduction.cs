namespace Explain;

/// <summary>A statement that follows by a rule.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Says">What is claimed.</param>
/// <param name="Why">The rule and what it rests on.</param>
public sealed record Deduction(ClaimId Id, Statement Says, RuleUse Why) : Step(Id, Says, Why);
