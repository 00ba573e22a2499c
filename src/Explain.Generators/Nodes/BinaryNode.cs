namespace Explain.Generators;

/// <summary>A sum, difference, product or quotient.</summary>
internal sealed record BinaryNode(char Sign, Node Left, Node Right) : Node
{
    public override UnitModel? Unit => Left.Unit is not { } left || Right.Unit is not { } right ? null : Sign switch
    {
        '*' => left.Times(right),
        '/' => left.Per(right),
        _ => left == right ? left : null,
    };

    public override IEnumerable<LetterNode> Letters => Left.Letters.Concat(Right.Letters);

    public static BinaryNode Of(char sign, Node left, Node right)
    {
        if (sign is '+' or '-') (left, right) = Alike(left, right);
        if (sign == '/' && left.IsAngle && right is NumberNode { IsTurn: true }) right = right.InDegrees()!;
        return new(sign, left, right);
    }

    public override Node? InDegrees() => Sign switch
    {
        _ when Unit is not { IsNone: true } => null,
        '*' => Factor(Left, Right) ?? Factor(Right, Left),
        '/' => Left.InDegrees() is { } left ? this with { Left = left } : null,
        _ => Left.InDegrees() is { } left && Right.InDegrees() is { } right ? new BinaryNode(Sign, left, right) : null,
    };

    /// <summary>The product with one factor in degrees: rather 180 than 2 in 2 × 180.</summary>
    private BinaryNode? Factor(Node first, Node second)
    {
        if (first.InDegrees() is not { } degrees || (first is NumberNode && second is NumberNode number && number.Numerator % 45 == 0)) return null;
        return ReferenceEquals(first, Left) ? this with { Left = degrees } : this with { Right = degrees };
    }
}
