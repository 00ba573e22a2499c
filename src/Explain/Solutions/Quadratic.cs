namespace Explain;

/// <summary>A law that is an equation x² + bx + c = 0 in one quantity x, with every root that it has.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Says">The quantity is one of the roots.</param>
/// <param name="Why">The rule and what it rests on.</param>
/// <param name="Law">The rule as it reads in this figure.</param>
/// <param name="For">The quantity.</param>
/// <param name="Named">The letter that stands for it in the equation.</param>
/// <param name="Linear">The value of b.</param>
/// <param name="Constant">The value of c.</param>
/// <param name="Roots">Each root once, the greater first, by the formula for the roots in b and c.</param>
public sealed record Quadratic(ClaimId Id, Statement Says, RuleUse Why, Compare Law, Symbol For, Letter Named,
    Calculation Linear, Calculation Constant, Items<Calculation> Roots) : Step(Id, Says, Why)
{
    /// <summary>The letter of the coefficient of x.</summary>
    public static readonly Letter B = new("b");

    /// <summary>The letter of the term without x.</summary>
    public static readonly Letter C = new("c");
}
