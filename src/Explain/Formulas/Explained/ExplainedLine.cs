namespace Explain;

/// <summary>A line of an explained method.</summary>
/// <param name="Reason">Why; null where none is given.</param>
public abstract record ExplainedLine(ExplainedReason? Reason);
