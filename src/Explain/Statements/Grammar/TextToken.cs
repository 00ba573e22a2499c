namespace Explain;

/// <summary>A piece of a statement.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Text">Its text, in one spelling for each way of typing it.</param>
/// <param name="Start">Where it begins.</param>
/// <param name="End">Where it ends; the place after its last sign.</param>
/// <param name="Spaced">Whether a space stands before it.</param>
internal readonly record struct TextToken(TokenKind Kind, string Text, int Start, int End, bool Spaced)
{
    public bool Is(string text) => Kind is TokenKind.Word or TokenKind.Sign or TokenKind.Number && Text == text;
}
