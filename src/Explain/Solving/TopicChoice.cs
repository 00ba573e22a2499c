namespace Explain;

/// <summary>The topic of a problem: the one that it names, or the only one that accepts it.</summary>
internal static class TopicChoice
{
    /// <summary>The topic, or what is wrong.</summary>
    public static (Topic? Topic, ProblemError? Error) Of(Problem problem, Topics topics)
    {
        if (problem.Topic is { } id) return topics.Find(id) is { } named ? (named, null) : (null, Unknown(problem, id, topics));
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

    private static ProblemError Unknown(Problem problem, TopicId id, Topics topics) => problem.ErrorAt("topic", new(ErrorCodes.UnknownTopic, ErrorPhrases.UnknownTopic(id.Name),
        Spelling.Nearest(id.Name, topics.All.Select(t => t.Id.Name)) is { } near ? StatementPhrases.DidYouMean(near) : ErrorPhrases.SeeTopics()));
}
