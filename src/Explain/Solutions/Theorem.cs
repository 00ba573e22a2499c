namespace Explain;

/// <summary>A general statement proved by a person, once, and used by appeal.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Given">The hypotheses.</param>
/// <param name="Then">The conclusion.</param>
/// <param name="Proof">The lines of the proof.</param>
/// <param name="Source">Author, source and review date.</param>
public sealed record Theorem(TheoremId Id, Items<Statement> Given, Statement Then, Items<ProofLine> Proof, string Source);
