namespace Explain;

/// <summary>Words chosen by a count: singular or plural.</summary>
/// <param name="Name">The argument that counts.</param>
/// <param name="One">What stands for one.</param>
/// <param name="Other">What stands for any other number.</param>
internal sealed record WordingChoice(string Name, string One, string Other) : WordingPiece
{
    /// <inheritdoc/>
    public override string Places => Name;
}
