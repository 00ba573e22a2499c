namespace Explain;

/// <summary>What is printed of a problem or its solution.</summary>
public enum Form
{
    /// <summary>The question alone.</summary>
    Question,

    /// <summary>The whole solution with every reason.</summary>
    WorkedSolution,

    /// <summary>The answers alone, for the back of a book.</summary>
    Answer,
}
