namespace Explain;

/// <summary>How a renderer prints. Immutable.</summary>
public sealed record RendererOptions
{
    /// <summary>The English; United Kingdom by default.</summary>
    public English English { get; init; }

    /// <summary>How much is shown; standard by default.</summary>
    public Detail Detail { get; init; } = Detail.Standard;

    /// <summary>The decimal sign; a point by default.</summary>
    public DecimalSign Numbers { get; init; }

    /// <summary>Texts of wording files for rules and phrases of the user's own, one phrase a line. Digits in them stand for numbers of these rules.</summary>
    public Items<string> Wording { get; init; }

    /// <summary>Wordings and templates that take the place of the library's.</summary>
    public House House { get; init; } = House.None;
}
