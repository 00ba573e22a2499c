namespace Explain.Generators;

/// <summary>A trigonometric function of an angle in degrees, or an inverse.</summary>
internal sealed record ApplyNode(string Function, Node To) : Node
{
    public override UnitModel Unit => IsInverse ? UnitModel.Degree : UnitModel.None;

    public override IEnumerable<LetterNode> Letters => To.Letters;

    public bool IsInverse => Function.StartsWith("Arc", StringComparison.Ordinal);

    /// <summary>What it must be taken of.</summary>
    public UnitModel Takes => IsInverse ? UnitModel.None : UnitModel.Degree;
}
