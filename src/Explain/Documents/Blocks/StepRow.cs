namespace Explain;

/// <summary>A row of a step table.</summary>
internal sealed record StepRow(string Number, Items<Inline> Statement, Items<Inline> Reason, ClaimId Of);
