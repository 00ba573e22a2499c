namespace Explain;

/// <summary>How many digits a value shows in working.</summary>
/// <param name="Places">Decimal places to begin with: 3 for lengths, areas and angles, 5 for ratios.</param>
/// <param name="Figures">The least number of significant figures.</param>
internal readonly record struct NumberStyle(int Places, int Figures)
{
    public static NumberStyle For(Unit unit, int figures = 4) => new(unit.Power == 0 ? 5 : 3, figures);
}
