namespace Explain;

/// <summary>A kind of problem that a file may name, whether or not it is solved.</summary>
/// <param name="Id">Its name in problem files.</param>
/// <param name="Fault">What is seen to be wrong with its figure before anything is solved; null when nothing is.</param>
internal sealed record KnownTopic(TopicId Id, Func<Problem, ProblemError?> Fault);
