namespace Explain;

/// <summary>The methods that a problem file may ask for, each with its other names.</summary>
internal static class MethodNames
{
    private static readonly Items<(string Name, Items<string> Also)> Table =
    [
        ("sine rule", ["law of sines", "the sine rule", "the law of sines"]),
        ("cosine rule", ["law of cosines", "the cosine rule", "the law of cosines"]),
        ("similar triangles", []),
        ("scale drawing", ["a scale drawing"]),
        ("ruler and compasses", ["ruler and compass", "straightedge and compass", "compass and straightedge"]),
    ];

    public static IEnumerable<string> All => Table.Select(m => m.Name);

    /// <summary>The method's own name; null when the text is none.</summary>
    public static string? Read(string text)
    {
        foreach ((string name, Items<string> also) in Table)
            if (text == name || also.Contains(text)) return name;
        return null;
    }

    public static Fault Fault(string text) => new(ErrorCodes.UnreadableStatement, ProblemPhrases.NotAMethod(text),
        Spelling.Nearest(text, All) is { } near ? StatementPhrases.DidYouMean(near) : ProblemPhrases.Methods(string.Join(", ", All)));
}
