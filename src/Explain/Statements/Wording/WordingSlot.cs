namespace Explain;

/// <summary>A placeholder for an argument.</summary>
/// <param name="Name">The argument.</param>
/// <param name="How">How it is said where not by its letters; null for its letters.</param>
internal sealed record WordingSlot(string Name, string? How = null) : WordingPiece
{
    /// <summary>What the story calls it: the prop; its letters where the story has no name for it.</summary>
    public const string Thing = "thing";

    /// <summary>As a line without ends, by what the story calls it: the rail; otherwise the line AB.</summary>
    public const string Line = "line";

    /// <summary>The first of two places of one point: B₁.</summary>
    public const string First = "1";

    /// <summary>The second of two places of one point: B₂.</summary>
    public const string Second = "2";

    /// <summary>Whether there is such a way of saying an object.</summary>
    public static bool Knows(string how) => how is Thing or Line or First or Second;

    /// <inheritdoc/>
    public override string Places => Name;
}
