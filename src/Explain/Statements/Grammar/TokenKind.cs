namespace Explain;

/// <summary>The kinds of token in a statement.</summary>
internal enum TokenKind
{
    /// <summary>A word in lower case, or one small Latin or Greek letter.</summary>
    Word,

    /// <summary>Points named together: A, PQ, ABC, A…K, B₁C′.</summary>
    Name,

    /// <summary>A number as typed.</summary>
    Number,

    /// <summary>A sign, in one spelling for each: − for a hyphen, × for an asterisk.</summary>
    Sign,

    /// <summary>Something that no statement holds.</summary>
    Other,
}
