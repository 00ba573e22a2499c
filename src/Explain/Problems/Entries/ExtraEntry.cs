namespace Explain;

/// <summary>Adds what a topic is given besides quantities of the figure.</summary>
internal static class ExtraEntry
{
    public const string Shares = "shares", FirstCut = "first cut", Tether = "tether";

    public static Items<string> Keys { get; } = [Shares, FirstCut, Tether];

    public static bool Takes(string key) => Keys.Contains(key);

    public static Problem Add(Problem problem, string key, string text, Position at, Position valueAt) => key switch
    {
        Shares => text.Split(", ").Aggregate(problem, (p, one) => AddShares(p, one.Trim(), at, valueAt)),
        FirstCut => Explain.FirstCut.Read(text) is null
            ? problem.WithUnread(GivenEntry.Key, key, new(ErrorCodes.UnreadableStatement, StatementPhrases.NotAStatement(text), ProblemPhrases.WriteAFirstCut()), valueAt)
            : problem with { Extras = problem.Extras.With(new(key, text, at)) },
        _ => AddLength(problem, key, text, at, valueAt),
    };

    private static Problem AddShares(Problem problem, string text, Position at, Position valueAt) => Count.Read(text, out Fault? fault) is not { } count
        ? problem.WithUnread(GivenEntry.Key, Shares, fault!, valueAt)
        : count.Numerator > problem.Limits.Shares
            ? problem.WithUnread(GivenEntry.Key, Shares, new(ErrorCodes.TooLarge, ProblemPhrases.TooManyShares(new Quantity(Exact.Of(count), Unit.None), problem.Limits.Shares), ProblemPhrases.RaiseTheLimit()), valueAt)
            : problem with { Extras = problem.Extras.With(new(Shares, text, at) { Value = new Quantity(Exact.Of(count), Unit.None) }) };

    private static Problem AddLength(Problem problem, string key, string text, Position at, Position valueAt)
    {
        if (!ValueReader.TryRead(text, out GivenValue? value, out Fault? fault)) return problem.WithUnread(GivenEntry.Key, key, fault, valueAt);
        return ValueCheck.OfLength(problem, key, value) is { } wrong
            ? problem.WithUnread(GivenEntry.Key, key, wrong, valueAt)
            : problem with { Extras = problem.Extras.With(new(key, value.Typed, at) { Value = value.Is, Within = value.Within }) };
    }
}
