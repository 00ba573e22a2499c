namespace Explain.Generators;

/// <summary>A sum, difference, product or quotient.</summary>
internal sealed record BinaryNode(char Sign, Node Left, Node Right) : Node
{
    public override bool IsNumber => Left.IsNumber && Right.IsNumber;

    public override bool IsAngle => Sign switch
    {
        '*' => Left.IsAngle != Right.IsAngle,
        '/' => Left.IsAngle && !Right.IsAngle,
        _ => Left.IsAngle || Right.IsAngle,
    };

    public static BinaryNode Of(char sign, Node left, Node right)
    {
        if (sign is '+' or '-') (left, right) = Alike(left, right);
        return new(sign, left, right);
    }

    public override Node InDegrees() => Sign switch
    {
        _ when !IsNumber || IsAngle => this,
        '*' or '/' => this with { Left = Left.InDegrees() },
        _ => this with { Left = Left.InDegrees(), Right = Right.InDegrees() },
    };
}
