namespace Explain;

/// <summary>
/// A problem: a figure, what is given, what is to be found. Immutable; each call of the builder returns a new problem.
/// A problem that could not be read carries its errors, and solving it refuses with them.
/// </summary>
public sealed partial record Problem
{
    /// <summary>A problem without anything yet, to be built in a program.</summary>
    /// <param name="topic">The topic; null when it is to be chosen by what the problem holds.</param>
    public static Problem About(string? topic = null) => About(topic, ReadingLimits.Default);

    /// <summary>A problem without anything yet, to be built in a program within other limits.</summary>
    public static Problem About(string? topic, ReadingLimits limits) =>
        new Problem { Topic = topic is null ? null : new(topic.Trim()), Limits = limits }.Checked();

    /// <summary>The topic; null when it is to be chosen by what the figure, the givens and the goals need.</summary>
    public TopicId? Topic { get; init; }

    /// <summary>A heading in the user's words.</summary>
    public string? Title { get; init; }

    /// <summary>The question to print, in the user's words; no data is read from it.</summary>
    public string? Question { get; init; }

    /// <summary>How the points and lines lie.</summary>
    public Items<FigureStatement> Figure { get; init; }

    /// <summary>The measurements.</summary>
    public Items<Given> Given { get; init; }

    /// <summary>What is to be found, in order.</summary>
    public Items<Goal> Find { get; init; }

    /// <summary>The user's wordings of lettered parts.</summary>
    public Items<PartWording> Parts { get; init; }

    /// <summary>What things are in the story.</summary>
    public Items<NameInStory> Names { get; init; }

    /// <summary>Assumptions in the user's words.</summary>
    public Items<string> Assume { get; init; }

    /// <summary>Methods asked for, in the words of a problem file.</summary>
    public Items<string> Methods { get; init; }

    /// <summary>How answers are rounded.</summary>
    public Items<RoundingRule> Round { get; init; }

    /// <summary>By how much given lengths may be wrong either way; null when nothing is said.</summary>
    public Expr? LengthsWithin { get; init; }

    /// <summary>By how much given angles may be wrong either way; null when nothing is said.</summary>
    public Expr? AnglesWithin { get; init; }

    /// <summary>The scale of drawings; null when nothing is said.</summary>
    public DrawingScale? Scale { get; init; }

    /// <summary>How far a drawn length may be off; null when nothing is said.</summary>
    public Expr? LengthTolerance { get; init; }

    /// <summary>How far a drawn angle may be off; null when nothing is said.</summary>
    public Expr? AngleTolerance { get; init; }

    /// <summary>What is given besides quantities of the figure, such as shares, the first cut or the length of a tether.</summary>
    public Items<Extra> Extras { get; init; }

    /// <summary>Marks for each letter.</summary>
    public Items<PartMarks> Marks { get; init; }

    /// <summary>The name of the file it came from, without its folder; null when built in a program.</summary>
    public string? File { get; init; }

    /// <summary>What is wrong with it as read, in the order of the lines; empty when it is complete.</summary>
    public Items<ProblemError> Errors { get; init; }

    /// <summary>How many errors are left out of <see cref="Errors"/> because there are more than can be reported at once.</summary>
    public int MoreErrors { get; init; }

    /// <summary>The limits that it is read within.</summary>
    public ReadingLimits Limits { get; init; } = ReadingLimits.Default;

    /// <summary>Where its keys stand, in the order of the file; empty when built in a program.</summary>
    public Items<KeyPlace> Keys { get; init; }

    /// <summary>What is wrong with one entry for itself.</summary>
    internal Items<ProblemError> EntryErrors { get; init; }

    /// <summary>Entries that could not be read: they hide what is wrong because of them.</summary>
    internal Items<UnreadEntry> Unread { get; init; }
}
