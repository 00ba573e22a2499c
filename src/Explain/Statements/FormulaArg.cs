namespace Explain;

/// <summary>A formula or a symbol; values of claims in it are printed as values.</summary>
/// <param name="Name">The name under which the wording places it.</param>
/// <param name="Is">What is said.</param>
public sealed record FormulaArg(string Name, Expr Is) : Arg(Name);
