namespace Explain;

/// <summary>A claim as the referee keeps it.</summary>
/// <param name="Claim">The claim.</param>
/// <param name="Of">The quantity whose value it states; null when it states none.</param>
/// <param name="Closed">That value, traced back to the givens by the referee.</param>
/// <param name="Figures">In which of the figures it was claimed.</param>
/// <param name="Open">The value in the measured quantities, their numbers left out.</param>
internal sealed record Testimony(Claimed Claim, Symbol? Of, Expr? Closed, Items<int> Figures, Expr? Open = null)
{
    public IEnumerable<Statement> Parts => Meaning.Of(Claim.Says);
}
