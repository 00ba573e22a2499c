namespace Explain;

/// <summary>Goes after what is asked, part after part: by formulas, by a height that is drawn, and in each case apart once the work has divided.</summary>
internal sealed class Pursuit(RuleBook book, Working working, Ledger opening)
{
    private readonly Dictionary<Symbol, Symbol> drawn = [];

    /// <summary>Each case that holds, with what is known in it; empty where the work did not divide.</summary>
    public Items<(string Name, Ledger Ledger)> Cases { get; private set; }

    /// <summary>Where the work divided; null where it did not.</summary>
    public Split? Split { get; private set; }

    /// <summary>What is known outside all cases, or in the only one that holds.</summary>
    public Ledger Ledger => Cases is [var only] ? only.Ledger : opening;

    /// <summary>The quantity that was found for the one asked for: for a distance the perpendicular that was drawn.</summary>
    public Symbol Found(Symbol asked) => drawn.GetValueOrDefault(asked, asked);

    /// <summary>The steps to quantities that are not known yet; null when one is out of reach.</summary>
    /// <param name="asked">The quantities.</param>
    /// <param name="swinging">What names the cases where a side swings; null where none does.</param>
    public Items<Step>? To(IEnumerable<Symbol> asked, Swinging? swinging)
    {
        Symbol[] wanted = [.. asked.Where(a => !drawn.ContainsKey(a))];
        if (Cases.Count > 1) return InEachCase(wanted);
        DistanceToLine[] heights = [.. wanted.OfType<DistanceToLine>().Where(IsToBeDrawn).Distinct()];
        Symbol[] direct = [.. wanted.Where(w => w is not Bearing && !heights.Contains(w))];
        if ((working.Reach(Ledger, direct) ?? new Landmarks(working).Reach(Ledger, direct)) is not { Impossible: false } reached) return null;
        if (swinging is not null) reached = swinging.Named(reached);
        if (reached.Cases.Count > 0) (Cases, Split) = (reached.Cases, reached.Steps.OfType<Split>().Last());
        List<Step> steps = [.. reached.Steps];
        foreach (DistanceToLine distance in heights)
        {
            if (new Heights(book, Ledger, working).Find(distance) is not { } height) return null;
            steps.AddRange(height.Steps);
            drawn[distance] = height.Is;
        }

        foreach (Bearing bearing in wanted.OfType<Bearing>().Distinct())
        {
            if (new Turning(working).Find(Ledger, bearing) is not { } turned) return null;
            steps.AddRange(turned);
        }

        return [.. steps];
    }

    /// <summary>A height is drawn where the angles at the ends of its base can be had; from three sides the area gives it.</summary>
    private bool IsToBeDrawn(DistanceToLine distance)
    {
        (Point p, Point q, Point t) = (distance.To.From, distance.To.To, distance.From);
        if (Ledger.Knows(distance) || p == t || q == t) return false;
        Angle[] angles = [new(q, p, t), new(p, q, t), new(p, t, q)];
        bool sidesOnly = !angles.Any(Ledger.Knows) && new[] { new Length(p, q), new Length(q, t), new Length(t, p) }.All(Ledger.Knows);
        return !(sidesOnly && working.Reaches(Ledger, [distance])) && working.Reaches(Ledger, angles.Take(2));
    }

    private Items<Step>? InEachCase(Symbol[] wanted)
    {
        if (Cases.All(c => wanted.All(c.Ledger.Knows))) return [];
        ClaimId id = opening.NextStep();
        List<Case> cases = [];
        foreach (Case one in Split!.Cases)
        {
            Ledger inside = Cases.First(c => c.Name == one.Name).Ledger;
            if (working.Reach(inside, wanted) is not { Impossible: false, Cases.Count: 0 } reached) return null;
            cases.Add(one with { Steps = reached.Steps });
        }

        return [Split with { Id = id, Cases = [.. cases], Title = TopicPhrases.EachTriangleAgain(), Remarks = [] }];
    }
}
