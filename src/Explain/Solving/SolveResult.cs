namespace Explain;

/// <summary>What became of a problem: <see cref="Solved"/>, <see cref="Refused"/> or <see cref="Failed"/>.</summary>
public abstract record SolveResult;
