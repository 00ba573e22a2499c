namespace Explain;

/// <summary>Upright words inside a formula, with the blanks that they need: "angle ".</summary>
internal sealed record MathWords(string Text) : MathPiece;
