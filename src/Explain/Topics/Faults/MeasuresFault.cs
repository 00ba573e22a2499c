namespace Explain;

/// <summary>Measurements, an area, a perimeter, a height or a radius among them, that no triangle has.</summary>
internal sealed class MeasuresFault(Problem problem, Ledger ledger)
{
    public ProblemError Of(Polygon triangle)
    {
        Symbol[] sides = [.. TriangleParts.Sides(triangle).Where(ledger.Knows)];
        if (sides.FirstOrDefault(s => !Feasible.AreSides([s], ledger)) is { } side) return Error(ErrorPhrases.NoSuchSide(Facts, ledger.Arrangement.Canonical(side), ledger.Evaluate(side)!));
        if (ledger.Known.OfType<Ratio>().FirstOrDefault(IsTooLarge) is { } sine) return Error(ErrorPhrases.NoSuchSine(Facts, sine.Of, ledger.Evaluate(sine)!));
        return sides.Length == 3 && Feasible.CannotBeSides(sides, ledger) ? new SidesFault(problem, ledger).Of([.. sides]) : Error(ErrorPhrases.NoTriangleWith(Facts));
    }

    private Items<Statement> Facts => [.. problem.Given.Select(Culprits.Fact)];

    private bool IsTooLarge(Ratio ratio) => ratio.Function == Function.Sine && ledger.Compare(ratio, 1) > 0;

    private ProblemError Error(Phrase message) => new(ErrorCodes.NoTriangle, Culprits.LinesOf(problem.Given.Select(g => g.At)), 0, message, ErrorPhrases.CheckMeasurements());
}
