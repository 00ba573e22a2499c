namespace Explain;

/// <summary>A calculation: one target, one formula, one value.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Says">The target equals the formula.</param>
/// <param name="Why">The rule and what it rests on.</param>
/// <param name="Law">The rule as it reads in this figure, before it is rearranged; empty where the formula is the rule itself.</param>
/// <param name="Target">What is found.</param>
/// <param name="Formula">The target's formula, in the symbols of the figure.</param>
/// <param name="Bindings">Where each symbol of the formula gets its value.</param>
/// <param name="Value">The value, evaluated from the givens.</param>
public sealed record Calculation(ClaimId Id, Statement Says, RuleUse Why, Items<Compare> Law, Symbol Target, Expr Formula,
    Items<Binding> Bindings, Value Value) : Step(Id, Says, Why);
