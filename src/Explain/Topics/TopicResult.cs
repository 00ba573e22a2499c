namespace Explain;

/// <summary>What a topic made of a problem: a solution, or what is wrong with it.</summary>
/// <param name="Solution">The solution; null when there are errors.</param>
/// <param name="Errors">What is wrong.</param>
internal sealed record TopicResult(Solution? Solution, Items<ProblemError> Errors);
