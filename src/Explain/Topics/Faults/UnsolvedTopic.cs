namespace Explain;

/// <summary>Refuses a problem of a topic that this version does not solve: with what is wrong in its figure, where that is seen.</summary>
internal static class UnsolvedTopic
{
    public static ProblemError Refuse(Problem problem, KnownTopic topic) => topic.Fault(problem) ?? Triangles(problem)
        ?? problem.ErrorAt("topic", new(ErrorCodes.NotSupported, ErrorPhrases.TopicNotSupported(topic.Id.Name), ErrorPhrases.SeeTopics()));

    private static ProblemError? Triangles(Problem problem)
    {
        Ledger ledger = new Opening(problem, new Topic(default, ""), new Work(0, CancellationToken.None)).Ledger;
        return ledger.Triangles.Where(t => !new Feasible(ledger).Holds(t))
            .Select(new Refusals(problem, ledger).NoSuchTriangle).FirstOrDefault();
    }
}
