namespace Explain;

/// <summary>Reads how well given lengths and angles were measured: nearest 0.1 m, or 0.5 m and 0.5° (at most this much either way).</summary>
internal static class AccuracyText
{
    private const string Nearest = "nearest ";

    /// <summary>The lengths' and the angles' tolerance; null when the text cannot be read.</summary>
    public static (Expr? Lengths, Expr? Angles)? Read(string text)
    {
        Expr? lengths = null, angles = null;
        foreach (string part in text.Split(" and "))
        {
            bool half = part.StartsWith(Nearest, StringComparison.Ordinal);
            if (!ValueReader.TryRead(half ? part[Nearest.Length..] : part, out GivenValue? value, out _) || value.Is is not Quantity within) return null;
            Expr tolerance = half ? new Quotient(within, 2) : within;
            if (within.Unit.IsAngle) angles = tolerance;
            else lengths = tolerance;
        }

        return (lengths, angles);
    }
}
