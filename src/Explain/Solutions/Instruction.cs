namespace Explain;

/// <summary>Something to draw or to let. It makes one thing, and what it says is what the act guarantees.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Says">What the act guarantees.</param>
/// <param name="Why">The rule and what it rests on.</param>
/// <param name="Act">What is done, in words.</param>
/// <param name="Makes">The objects that it brings into the figure.</param>
public sealed record Instruction(ClaimId Id, Statement Says, RuleUse Why, Phrase Act, Items<Named> Makes) : Step(Id, Says, Why);
