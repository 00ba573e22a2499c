namespace Explain;

/// <summary>The topic of a problem: the one that it names, or the only one that accepts it.</summary>
internal static class TopicChoice
{
    /// <summary>The topic, or what is wrong.</summary>
    public static (Topic? Topic, ProblemError? Error) Of(Problem problem, Topics topics)
    {
        if (problem.Topic is { } id) return topics.Find(id) is { } named ? (named, null) : (null, NotThere(problem, id, topics));
        if (problem.Errors.Count > 0) return (null, null);
        Topic[] fit = [.. topics.All.Where(t => t.Accepts(problem))];
        return fit switch
        {
            [var only] => (only, null),
            [] => (null, problem.ErrorAt(FindEntry.Key, new(ErrorCodes.NotSupported, SolvingPhrases.NoTopic(), ErrorPhrases.SeeTopics()))),
            _ => (null, problem.ErrorAt(problem.Keys.Count > 0 ? problem.Keys[0].Key : "", new(ErrorCodes.WhichTopic,
                ErrorPhrases.WhichTopic(string.Join(", ", fit.Select(t => t.Id.Name))), ErrorPhrases.NameTheTopic()))),
        };
    }

    /// <summary>A kind of problem that is known and not solved is refused for what is wrong with its figure, where that is seen.</summary>
    private static ProblemError? NotThere(Problem problem, TopicId id, Topics topics) => KnownTopics.Find(id) is { } known
        ? problem.Errors.Count > 0 ? null : UnsolvedTopic.Refuse(problem, known)
        : problem.ErrorAt("topic", new(ErrorCodes.UnknownTopic, ErrorPhrases.UnknownTopic(id.Name), Nearest(id, topics)));

    private static Phrase Nearest(TopicId id, Topics topics) =>
        Spelling.Nearest(id.Name, topics.All.Select(t => t.Id).Union(KnownTopics.All.Select(k => k.Id)).Select(t => t.Name)) is { } near ? StatementPhrases.DidYouMean(near) : ErrorPhrases.SeeTopics();
}
