namespace Explain;

/// <summary>An equation solved for a letter. The lines are produced from the start and can be produced again.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Says">The letter equals its value.</param>
/// <param name="Why">The rule and what it rests on.</param>
/// <param name="Start">The equation to begin with.</param>
/// <param name="For">The letter.</param>
/// <param name="Lines">The lines from the start to the solution.</param>
public sealed record Algebra(ClaimId Id, Statement Says, RuleUse Why, Compare Start, Symbol For, Items<EquationLine> Lines)
    : Step(Id, Says, Why);
