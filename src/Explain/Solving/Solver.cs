namespace Explain;

/// <summary>Solves problems. Immutable and safe to share: one for a whole application.</summary>
public sealed class Solver
{
    private readonly RuleBook book = RuleBook.Standard;
    private readonly Items<Topic> topics = Topics.All;

    /// <summary>Solves a problem. Bad mathematics is a result, never an exception.</summary>
    /// <param name="problem">The problem.</param>
    public SolveResult Solve(Problem problem)
    {
        Topic? topic = TopicOf(problem, out ProblemError? error);
        if (problem.Errors.Count > 0) return new Refused(error is null || problem.Topic is null ? problem.Errors : problem.ErrorsWith(error));
        if (topic is null) return new Refused([error!]);
        TopicResult result = new SolutionBuilder(problem, topic, book).Build();
        if (result.Solution is not { } solution) return new Refused(result.Errors);
        Verification verification = new Referee(book).Verify(solution, topic.Model);
        return verification.Findings.Count > 0 ? new Failed(verification.Findings) : new Solved(solution with { Verification = verification });
    }

    private Topic? TopicOf(Problem problem, out ProblemError? error)
    {
        error = null;
        if (problem.Topic is not { } id)
        {
            error = new(ErrorCodes.WhichTopic, [], 0, ErrorPhrases.WhichTopic(string.Join(", ", topics.Select(t => t.Id.Name))), ErrorPhrases.NameTheTopic());
            return null;
        }

        Topic? topic = topics.FirstOrDefault(t => t.Id == id);
        if (topic is null) error = problem.ErrorAt("topic", new(ErrorCodes.UnknownTopic, ErrorPhrases.UnknownTopic(id.Name),
            Spelling.Nearest(id.Name, topics.Select(t => t.Id.Name)) is { } near ? StatementPhrases.DidYouMean(near) : ErrorPhrases.SeeTopics()));
        return topic;
    }
}
