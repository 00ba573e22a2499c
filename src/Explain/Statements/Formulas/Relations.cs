namespace Explain;

/// <summary>The signs of relations.</summary>
internal static class Relations
{
    public static Relation? Of(TextToken token) => token.Kind != TokenKind.Sign ? null : token.Text switch
    {
        "=" or "≅" => Relation.Equal,
        "<" => Relation.Less,
        "≤" => Relation.LessOrEqual,
        ">" => Relation.Greater,
        "≥" => Relation.GreaterOrEqual,
        "≠" => Relation.Different,
        _ => null,
    };

    public static string Sign(Relation relation) => relation switch
    {
        Relation.Equal => "=",
        Relation.Less => "<",
        Relation.LessOrEqual => "≤",
        Relation.Greater => ">",
        Relation.GreaterOrEqual => "≥",
        _ => "≠",
    };
}
