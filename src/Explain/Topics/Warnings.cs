namespace Explain;

/// <summary>What a reader should see although the problem is solved.</summary>
internal static class Warnings
{
    public static Items<Warning> Of(Items<Part> parts, int cases)
    {
        Items<Answer> answers = [.. parts.SelectMany(p => p.Answers)];
        return
        [
            .. cases > 1 ? [new Warning(ErrorCodes.SeveralSolutions, TopicPhrases.SeveralSolutions())] : (Items<Warning>)[],
            .. answers.Where(a => a.Values.Any(v => v is { Round.Exact: true, Value.Exact: null })).Select(a => new Warning(ErrorCodes.NoExactForm, TopicPhrases.NoExactForm(a.For.AsTyped))),
        ];
    }
}
