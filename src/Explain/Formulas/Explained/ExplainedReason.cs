namespace Explain;

/// <summary>Why a line of an explained method holds.</summary>
public abstract record ExplainedReason;
