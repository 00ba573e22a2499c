namespace Explain;

/// <summary>The number that the page gives to a step.</summary>
internal sealed record StepRun(string Number) : Inline;
