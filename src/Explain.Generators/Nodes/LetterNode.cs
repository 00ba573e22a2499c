namespace Explain.Generators;

/// <summary>A symbol.</summary>
/// <param name="Name">As it is printed.</param>
/// <param name="Angle">Whether it stands for an angle.</param>
internal sealed record LetterNode(string Name, bool Angle) : Node
{
    public override bool IsNumber => false;

    public override bool IsAngle => Angle;
}
