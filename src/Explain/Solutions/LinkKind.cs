namespace Explain;

/// <summary>Why a part of a formula moves the way it does.</summary>
public enum LinkKind
{
    /// <summary>It is a sum, a difference or an angle that holds the measurement.</summary>
    Part,

    /// <summary>It is a ratio of an angle that stays acute.</summary>
    Acute,

    /// <summary>It is a ratio of an angle that stays obtuse.</summary>
    Obtuse,

    /// <summary>Something is divided by it.</summary>
    Divisor,
}
