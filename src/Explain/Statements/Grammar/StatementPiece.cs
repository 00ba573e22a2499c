namespace Explain;

/// <summary>A piece of a statement as it is printed: words, the name of an object, or a formula.</summary>
/// <param name="Words">The piece as plain text.</param>
/// <param name="Named">The object, where it is a name.</param>
/// <param name="Formula">The formula, where it is one.</param>
internal sealed record StatementPiece(string Words, Named? Named, Expr? Formula)
{
    public static StatementPiece Name(Named named, English english) => new(NameText.Write(named, english), named, null);
}
