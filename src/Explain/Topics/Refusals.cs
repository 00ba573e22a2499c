namespace Explain;

/// <summary>Says why no triangle fits the measurements, or why they do not fix one.</summary>
internal sealed class Refusals(Problem problem, Ledger ledger)
{
    public ProblemError NoSuchTriangle(Polygon triangle)
    {
        Items<Symbol> sides = [.. TriangleParts.Sides(triangle).Where(ledger.Knows)], angles = [.. TriangleParts.Angles(triangle).Where(ledger.Knows)];
        if (sides.Count == 3 && Feasible.CannotBeSides([.. sides], ledger)) return new SidesFault(problem, ledger).Of(sides);
        return angles.Count >= 2 ? new AnglesFault(problem, ledger).Of(triangle, angles) : new ReachFault(problem, ledger).Of(SwingingSide.Of(triangle, ledger)!);
    }

    public ProblemError NotEnough(Symbol wanted, Polygon triangle)
    {
        Items<int> lines = Culprits.LinesOf(problem.Find.Select(g => g.At));
        if (problem.Given.Any(g => QuantityKinds.Of(g.Of) == QuantityKind.Length)) return new(ErrorCodes.NotEnoughData, lines, 0, ErrorPhrases.NotEnoughData(wanted), ErrorPhrases.GiveMore());
        Items<Symbol> open = [.. TriangleParts.Sides(triangle).Select(s => ledger.Arrangement.Canonical((Symbol)s)).Where(s => s != wanted)];
        return new(ErrorCodes.NotEnoughData, lines, 0, ErrorPhrases.NoLength(wanted), ErrorPhrases.GiveALength(triangle, open));
    }

    /// <summary>A quantity whose bounds are asked for has none.</summary>
    public static ProblemError NoBounds(Goal goal, (string Code, Phrase Message, Phrase Remedy) fault) => new(fault.Code, Culprits.LinesOf([goal.At]), goal.At.Column, fault.Message, fault.Remedy);

    /// <summary>More than one figure fits: which of two points on one side or on both of a line is not said.</summary>
    public ProblemError NotFixed(Items<Layout> layouts) => new(ErrorCodes.ArrangementNotFixed, Culprits.LinesOf(problem.Figure.Select(f => f.At)), 0,
        ErrorPhrases.NotFixed(layouts.Count), ErrorPhrases.SayWhichSide());

    public ProblemError NotSupported(Goal goal) =>
        new(ErrorCodes.NotSupported, Culprits.LinesOf([goal.At]), goal.At.Column, ErrorPhrases.NotSupported(goal.AsTyped), ErrorPhrases.SeeTopics());

    public static ProblemError NotInLetters(Given given) => ProblemEntries.Error(new(ErrorCodes.NotSupported, ErrorPhrases.NotInLetters(given.Of, given.Typed), ErrorPhrases.WriteANumber()), given.At);

    public static ProblemError Contradiction(Clash clash)
    {
        Given last = clash.Set[^1];
        Given[] others = [.. clash.Set.Where(g => g != last)], from = [.. clash.Set.Where(g => g != clash.Of)];
        return new(ErrorCodes.Contradiction, Culprits.LinesOf([last.At]), 0,
            ErrorPhrases.Contradiction(Culprits.Fact(last), Culprits.Named(others), Culprits.Named(from), clash.Of.Of, clash.Derived), ErrorPhrases.RemoveOne());
    }
}
