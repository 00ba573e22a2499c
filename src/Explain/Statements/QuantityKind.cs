namespace Explain;

/// <summary>What kind of value a quantity has.</summary>
internal enum QuantityKind
{
    /// <summary>A plain number, or anything: a letter.</summary>
    Number,

    /// <summary>A length.</summary>
    Length,

    /// <summary>An area.</summary>
    Area,

    /// <summary>An angle or a bearing.</summary>
    Angle,
}
