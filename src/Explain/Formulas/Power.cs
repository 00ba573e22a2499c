namespace Explain;

/// <summary>A power with a whole exponent, 2 or more.</summary>
/// <param name="Base">What is raised.</param>
/// <param name="Exponent">How often it is multiplied.</param>
public sealed record Power(Expr Base, int Exponent) : Expr;
