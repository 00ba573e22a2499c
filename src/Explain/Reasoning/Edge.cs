namespace Explain;

/// <summary>One way to one quantity: a relation of the figure with this unknown, isolated.</summary>
/// <param name="Instance">The relation.</param>
/// <param name="Target">The unknown.</param>
/// <param name="Solved">Its formula and the lines of algebra that lead to it.</param>
/// <param name="Inputs">The quantities the formula needs.</param>
/// <param name="Cost">What the step costs a reader.</param>
internal sealed record Edge(Instance Instance, Symbol Target, Isolation Solved, Items<Symbol> Inputs, double Cost);
