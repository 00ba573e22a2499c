namespace Explain;

/// <summary>A word between two formulas on one line: so, or.</summary>
internal sealed record MathJoin(string Word) : MathPiece;
