namespace Explain;

/// <summary>Estimates how wide a piece is when displayed, in average characters, so that long lines can be broken.</summary>
internal static class MathWidth
{
    public static double Of(MathPiece piece) => piece switch
    {
        MathRow r => r.Of.Sum(Of),
        MathName n => 1.4 * n.Letters.Length,
        MathWords w => 0.9 * w.Text.Length,
        MathNumber n => n.Digits.Length + (n.Continues ? 2.5 : 0),
        MathUnit { Is.IsAngle: true } => 0.8,
        MathUnit u => 0.6 + (1.4 * u.Is.Symbol.Length),
        MathSign => 2.6,
        MathJoin j => 5 + j.Word.Length,
        MathMark m => 1.4 * m.Sign.Length,
        MathFraction f => 0.5 + double.Max(Of(f.Top), Of(f.Bottom)),
        MathRoot r => 1.7 + Of(r.Of),
        MathPower p => 0.8 + Of(p.Base),
        MathFunction f => (f.IsInverse ? 5 : 3.3) + Of(f.Of),
        MathBrackets b => 1.6 + Of(b.Of),
        _ => 0,
    };
}
