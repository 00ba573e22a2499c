namespace Explain;

/// <summary>A bearing, from another bearing at the same point and the angle between the two directions.</summary>
internal sealed class Turning(Working working)
{
    private readonly Landmarks landmarks = new(working);

    public Items<Step>? Find(Ledger ledger, Bearing wanted)
    {
        if ((working.Reach(ledger, [wanted]) ?? landmarks.Reach(ledger, [wanted])) is { Impossible: false, Cases.Count: 0 } direct) return direct.Steps;
        foreach (Point other in ledger.Arrangement.Points.Where(p => p != wanted.From && p != wanted.Of))
        {
            Symbol[] needed = [new Bearing(other, wanted.From), new Angle(other, wanted.From, wanted.Of)];
            if ((working.Reach(ledger, needed) ?? landmarks.Reach(ledger, needed)) is not { Impossible: false, Cases.Count: 0 } first) continue;
            if (working.Reach(ledger, [wanted]) is { Impossible: false, Cases.Count: 0 } turned) return [.. first.Steps, .. turned.Steps];
        }

        return null;
    }
}
