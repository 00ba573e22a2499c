namespace Explain;

/// <summary>The least and the greatest value of a formula over a box.</summary>
/// <param name="Least">The least.</param>
/// <param name="Greatest">The greatest.</param>
/// <param name="Trends">One for each measurement in the formula that has a width.</param>
/// <param name="Boxes">How many boxes were examined for all of it.</param>
internal sealed record Bounded(Extreme Least, Extreme Greatest, Items<Trend> Trends, int Boxes) : Evaluation
{
    /// <summary>Whether both ends are at the corners that the directions name.</summary>
    public bool IsMonotone => Trends.All(t => t.Direction != Direction.Neither);
}
