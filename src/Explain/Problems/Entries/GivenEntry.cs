namespace Explain;

/// <summary>Adds a measurement: a quantity and its value.</summary>
internal static class GivenEntry
{
    public const string Key = "given";

    /// <summary>Reads a quantity or a word of a topic with its value; a fault of the value stands where the value does.</summary>
    public static Problem Add(Problem problem, string key, string text, Position at, Position valueAt)
    {
        if (ExtraEntry.Takes(key)) return ExtraEntry.Add(problem, key, text, at, valueAt);
        if (QuantityGrammar.Read(key) is not { } of) return problem.WithUnread(Key, key, Unreadable(key), at);
        if (!ValueReader.TryRead(text, out GivenValue? value, out Fault? fault)) return problem.WithUnread(Key, key, fault, valueAt);
        if (key.Contains("m∠", StringComparison.Ordinal)) value = InDegrees(value);
        return ValueCheck.Of(problem, of, key, value) is { } wrong
            ? problem.WithUnread(Key, key, wrong, valueAt)
            : problem with { Given = problem.Given.With(new(of, value.Is, value.Within, value.Typed, at)) };
    }

    private static Fault Unreadable(string key) => Spelling.Nearest(key, ExtraEntry.Keys) is { } near
        ? new(ErrorCodes.UnreadableStatement, StatementPhrases.NotAQuantity(key), StatementPhrases.DidYouMean(near)) : NearestStatement.QuantityFault(key);

    /// <summary>m∠ is a number of degrees.</summary>
    private static GivenValue InDegrees(GivenValue value) =>
        value.Unit == Unit.None && WithUnit.Of(value.Is, Unit.Degree) is { } degrees ? value with { Is = degrees } : value;
}
