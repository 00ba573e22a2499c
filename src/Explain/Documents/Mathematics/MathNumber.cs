namespace Explain;

/// <summary>A number.</summary>
/// <param name="Digits">Its digits, the decimal sign as it is to be printed, a minus as U+2212.</param>
/// <param name="Continues">Whether it was cut short, so that an ellipsis follows.</param>
internal sealed record MathNumber(string Digits, bool Continues) : MathPiece
{
    public override MathLevel Level => Digits.StartsWith('−') ? MathLevel.Sum : MathLevel.Atom;
}
