namespace Explain;

/// <summary>What a problem may hold at most. A program may raise these limits; a problem file may not.</summary>
public sealed record ReadingLimits
{
    /// <summary>The limits that hold unless a program says otherwise.</summary>
    public static ReadingLimits Default { get; } = new();

    /// <summary>Bytes of a file; 256 KiB.</summary>
    public int FileBytes { get; init; } = 256 * 1024;

    /// <summary>How deep lists and maps may stand in each other.</summary>
    public int Nesting { get; init; } = 8;

    /// <summary>Characters of one text.</summary>
    public int TextLength { get; init; } = 10_000;

    /// <summary>Entries of one list or map.</summary>
    public int Entries { get; init; } = 200;

    /// <summary>Points of a figure.</summary>
    public int Points { get; init; } = TextLimits.Points;

    /// <summary>Marks of one part.</summary>
    public int Marks { get; init; } = 1000;

    /// <summary>Equal shares.</summary>
    public int Shares { get; init; } = 1000;

    /// <summary>Errors reported at once.</summary>
    public int Errors { get; init; } = 20;
}
