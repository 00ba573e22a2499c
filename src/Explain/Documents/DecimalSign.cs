namespace Explain;

/// <summary>The decimal signs.</summary>
public enum DecimalSign
{
    /// <summary>9.5</summary>
    Point,

    /// <summary>9,5</summary>
    Comma,
}
