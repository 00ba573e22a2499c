namespace Explain;

/// <summary>A placeholder for an argument.</summary>
internal sealed record WordingSlot(string Name) : WordingPiece
{
    /// <inheritdoc/>
    public override string Places => Name;
}
