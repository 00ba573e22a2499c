namespace Explain;

/// <summary>A division into cases; the reason says why these are all.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Says">One of the cases holds.</param>
/// <param name="Why">Why these are all the cases.</param>
/// <param name="Cases">The cases.</param>
public sealed record Split(ClaimId Id, Statement Says, RuleUse Why, Items<Case> Cases) : Step(Id, Says, Why);
