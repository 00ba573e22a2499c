using System.Collections.Frozen;

namespace Explain;

/// <summary>Solves problems. Immutable and safe to share between threads: one for a whole application.</summary>
public sealed class Solver
{
    /// <summary>What a use of a relation that was added to the rule book costs a reader: as much as the dearest relation of the library.</summary>
    private const double CostOfAdded = 2.5;

    private readonly FrozenDictionary<TopicId, (Topic Topic, RuleBook Book)> known;

    /// <summary>A solver with the options given.</summary>
    /// <param name="options">The options; those of the library when left out.</param>
    /// <exception cref="ArgumentException">A topic brings a rule whose id the rule book has for another rule, or a pattern that cannot be read.</exception>
    public Solver(SolverOptions? options = null)
    {
        Options = options ?? new SolverOptions();
        known = Options.Topics.All.ToFrozenDictionary(t => t.Id, t => (Trying(t), BookOf(t)));
    }

    /// <summary>The options.</summary>
    public SolverOptions Options { get; }

    /// <summary>Solves a problem. Bad mathematics is a result, never an exception.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="cancel">Says that the result is no longer wanted.</param>
    /// <exception cref="OperationCanceledException">The result is no longer wanted.</exception>
    public SolveResult Solve(Problem problem, CancellationToken cancel = default)
    {
        cancel.ThrowIfCancellationRequested();
        (Topic? topic, ProblemError? error) = TopicChoice.Of(problem, Options.Topics);
        if (problem.Errors.Count > 0) return Refused(error is null ? problem : problem.Reporting(error));
        if (topic is null) return new Refused([error!]);
        try
        {
            return Solve(problem, topic.Id, cancel);
        }
        catch (TooMuchWorkException)
        {
            return new Refused([problem.ErrorAt(FindEntry.Key, new(ErrorCodes.TooLarge, SolvingPhrases.TooMuchWork(), ProblemPhrases.RaiseTheLimit()))]);
        }
    }

    private static Refused Refused(Problem problem) => new(problem.Errors) { More = problem.MoreErrors };

    private SolveResult Solve(Problem problem, TopicId id, CancellationToken cancel)
    {
        (Topic topic, RuleBook book) = known[id];
        TopicResult result = new SolutionBuilder(problem, topic, book, new Work(Options.Limits.UsesOfRules, cancel)).Build();
        if (result.Solution is not { } solution) return new Refused(result.Errors);
        if (!Options.Verify) return new Solved(solution);
        if (IsBeyond(problem, topic.Model)) return new Refused([problem.ErrorAt(FindEntry.Key, new(ErrorCodes.NotSupported, ErrorPhrases.NotSupported(problem.Find[0].AsTyped), ErrorPhrases.SeeTopics()))]);
        Verification verification = new Referee(book).Verify(solution, topic.Model, cancel);
        return verification.Findings.Count > 0 ? new Failed(verification.Findings) : new Solved(solution with { Verification = verification });
    }

    /// <summary>Whether an area, a perimeter or a radius is given from which the figure cannot be drawn, so that nobody could verify an answer.</summary>
    private static bool IsBeyond(Problem problem, IIndependentModel model) => problem.Given.Any(g => g.Of is Measure) && model.Layouts(problem, Enclosure.Ladder[0]) is null;

    /// <summary>The topic with the relations that were added to the rule book.</summary>
    private Topic Trying(Topic topic)
    {
        HashSet<RuleId> own = [.. RuleBook.Standard.Rules.Concat(topic.Rules).Concat(topic.Working.Select(w => w.Rule)).Select(r => r.Id)];
        CostedRule[] added = [.. Options.Rules.Rules.Where(r => r.Law is not null && !own.Contains(r.Id)).Select(r => new CostedRule(r, CostOfAdded))];
        return added.Length == 0 ? topic : topic with { Working = [.. topic.Working, .. added] };
    }

    private RuleBook BookOf(Topic topic) => topic.Rules.Except(Options.Rules.Rules).ToArray() is { Length: > 0 } own ? Options.Rules.With([.. own]) : Options.Rules;
}
