namespace Explain;

/// <summary>Whether isolating gave up a second value, and which.</summary>
internal enum SecondValue
{
    /// <summary>There is one value.</summary>
    None,

    /// <summary>An angle and 180° less that angle have the same sine.</summary>
    Supplement,

    /// <summary>A number and its negative have the same square; of a length only the positive one counts.</summary>
    Negative,
}
