namespace Explain;

/// <summary>One thing to find.</summary>
/// <param name="AsTyped">The words of the problem file.</param>
/// <param name="Wanted">The quantity; null when none is asked for.</param>
/// <param name="Kind">What kind of thing it is.</param>
public sealed record Goal(string AsTyped, Symbol? Wanted, GoalKind Kind)
{
    /// <summary>The letter of its part; null when there are no letters.</summary>
    public string? Letter { get; init; }

    /// <summary>The polygon whose angles or sides are wanted; null otherwise.</summary>
    public Polygon? Shape { get; init; }

    /// <summary>The statement to prove or to show; null otherwise.</summary>
    public Statement? Statement { get; init; }

    /// <summary>The words of a thing that only a topic knows, in one spelling, such as <c>area of region</c>; null otherwise.</summary>
    public string? Words { get; init; }

    /// <summary>For cuts, how many shares they are for; null where all are meant.</summary>
    public int? Shares { get; init; }

    /// <summary>The method, in the words of a problem file; null where none is stated.</summary>
    public string? Method { get; init; }

    /// <summary>Where it stands.</summary>
    public Position At { get; init; }
}
