namespace Explain;

/// <summary>A reason in the author's own words, printed as they stand in every English and never taken for markup.</summary>
/// <param name="Text">The words.</param>
public sealed record WrittenReason(string Text) : ExplainedReason;
