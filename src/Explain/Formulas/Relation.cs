namespace Explain;

/// <summary>How two neighbours of a chain are related.</summary>
public enum Relation
{
    /// <summary>Equal.</summary>
    Equal,

    /// <summary>Less than.</summary>
    Less,

    /// <summary>Less than or equal to.</summary>
    LessOrEqual,

    /// <summary>Greater than.</summary>
    Greater,

    /// <summary>Greater than or equal to.</summary>
    GreaterOrEqual,

    /// <summary>Not equal.</summary>
    Different,
}
