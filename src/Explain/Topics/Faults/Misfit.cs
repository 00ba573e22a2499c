namespace Explain;

/// <summary>Whether the triangle that a given area, perimeter, height or radius leads to exists and has all that is given.</summary>
internal sealed class Misfit(Problem problem, Working working, Polygon triangle)
{
    private readonly Items<Symbol> sides = [.. TriangleParts.Sides(triangle)];

    /// <summary>Whether anything but sides and angles is given, so that the measurements alone do not tell.</summary>
    private bool IsInQuestion => problem.Given.Any(g => g.Of is Measure or DistanceToLine);

    /// <summary>Whether there are as many conditions as fix a triangle, though no rule of the topic leads from them to it.</summary>
    public bool HasEnough => IsInQuestion && problem.Given.Count + problem.Figure.SelectMany(f => Meaning.Of(f.Says)).Count(s => s is Compare { Terms.Count: 2 } or Place { Kind: PlaceKind.RightAngle }) >= 3;

    /// <summary>What is wrong with what was found, in each case; null where nothing is.</summary>
    public ProblemError? Fault(Items<Ledger> cases)
    {
        if (!IsInQuestion) return null;
        ProblemError?[] faults = [.. cases.Select(Fault)];
        return faults.All(f => f is not null) ? faults[0] : faults.Any(f => f is not null) ? new Refusals(problem, cases[0]).NotSupported(problem.Find[0]) : null;
    }

    private ProblemError? Fault(Ledger found)
    {
        Ledger at = found.Fork();
        Reached? reached = working.Reach(at, [.. sides]);
        bool closes = reached is not { Impossible: true } && Feasible.AreSides([.. sides], at);
        return closes && (reached is null || problem.Given.All(g => Has(at.Only(sides), g))) ? null : new MeasuresFault(problem, at).Of(triangle);
    }

    /// <summary>Whether the three sides have a measurement. What cannot be decided may be so.</summary>
    private bool Has(Ledger only, Given given) => working.Reach(only, [given.Of]) is not { Impossible: false, Cases.Count: 0 } || only.Compare(given.Of, given.Value) is null or 0;
}
