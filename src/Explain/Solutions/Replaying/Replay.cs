namespace Explain;

/// <summary>A solution evaluated again with changes. Immutable; equal when the solution, the changes and what came of them are.</summary>
/// <param name="Of">The solution.</param>
/// <param name="Changes">The changes.</param>
/// <param name="Values">The value of each given and step that has one and still stands, in order.</param>
/// <param name="Broken">What does not stand any more, in order; empty where the whole argument holds with the changes.</param>
public sealed record Replay(Solution Of, Items<Change> Changes, Items<Outcome> Values, Items<Broken> Broken)
{
    /// <summary>The value of a claim; null where it has none, or does not stand.</summary>
    /// <param name="claim">The claim.</param>
    public Value? this[ClaimId claim]
    {
        get
        {
            foreach (Outcome outcome in Values)
                if (outcome.Claim == claim) return outcome.Value;
            return null;
        }
    }
}
