namespace Explain;

/// <summary>How mathematics is written.</summary>
/// <param name="English">× and angle ABC, or · and m∠ABC.</param>
/// <param name="Comma">Whether decimals have a comma.</param>
/// <param name="Figures">The least number of figures of a value in working.</param>
internal sealed record MathStyle(English English, bool Comma, int Figures)
{
    /// <summary>The unit of lengths in working; null to leave each in its own.</summary>
    public Unit? Lengths { get; init; }

    /// <summary>Whether values in working stand in their exact form, where they have one.</summary>
    public bool Exact { get; init; }

    /// <summary>Whether exact forms are written with fractions: no measurement is typed as a decimal.</summary>
    public bool Fractions { get; init; }

    public string Times => English == English.UnitedStates ? "·" : "×";
}
