namespace Explain;

/// <summary>A number as it is shown: its digits with a point, and whether more follow.</summary>
/// <param name="Digits">The digits; a minus is U+2212; no thousands separators.</param>
/// <param name="Continues">Whether it was cut short, so that an ellipsis follows.</param>
/// <param name="IsExact">Whether the value equals what is shown.</param>
public sealed record Shown(string Digits, bool Continues, bool IsExact);
