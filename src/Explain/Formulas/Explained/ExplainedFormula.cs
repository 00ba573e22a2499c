namespace Explain;

/// <summary>An explained method as data: its symbols, its lines as trees, and their reasons. The generator writes it.</summary>
/// <param name="Name">The method's name.</param>
/// <param name="Title">The method's own summary; empty when it has none.</param>
/// <param name="Parameters">What is put in.</param>
/// <param name="Result">The symbol of the result.</param>
/// <param name="Unit">The unit of the result.</param>
/// <param name="Lines">The lines, in the order of the method.</param>
public sealed record ExplainedFormula(string Name, string Title, Items<ExplainedParameter> Parameters, Letter Result, Unit Unit, Items<ExplainedLine> Lines);
