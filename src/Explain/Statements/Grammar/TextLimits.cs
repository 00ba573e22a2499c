namespace Explain;

/// <summary>What one text of a problem may hold at most, so that reading it is bounded work. These limits are part of the grammar: no option raises them.</summary>
internal static class TextLimits
{
    /// <summary>Words, names, numbers and signs of a statement, a value or a thing to find.</summary>
    public const int Tokens = 400;

    /// <summary>Digits of a number; the power of ten in 1e6.</summary>
    public const int Digits = 30;

    /// <summary>How deep brackets, roots and functions may stand in each other.</summary>
    public const int Depth = 24;

    /// <summary>Roots of a formula.</summary>
    public const int Roots = 8;

    /// <summary>The exponent of a power.</summary>
    public const int Exponent = 9;

    /// <summary>Corners of a polygon, and points of a figure unless a program says otherwise: the letters of the alphabet.</summary>
    public const int Points = 26;

    /// <summary>Bits of an exact number before it is raised to a power or put under a root.</summary>
    public const int ExactBits = 4096;

    /// <summary>Figures or places of a rounding rule.</summary>
    public const int RoundingDigits = 15;
}
