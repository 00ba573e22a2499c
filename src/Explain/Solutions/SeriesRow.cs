namespace Explain;

/// <summary>A row of a series: the same skeleton of steps as in every other row.</summary>
/// <param name="Label">What the row is.</param>
/// <param name="Cells">Its steps.</param>
public sealed record SeriesRow(Phrase Label, Items<Step> Cells);
