namespace Explain;

/// <summary>A line of a theorem's proof.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Says">The words.</param>
/// <param name="Claim">What it claims, where that can be tested in random figures.</param>
/// <param name="From">The lines it rests on.</param>
/// <param name="UsesGiven">The hypotheses it uses, counted from 0.</param>
public sealed record ProofLine(LineId Id, Phrase Says, Statement? Claim, Items<LineId> From, Items<int> UsesGiven);
