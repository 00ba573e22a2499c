namespace Explain;

/// <summary>The name of a phrase, whose words live in the wording files.</summary>
/// <param name="Name">The name. Two ids are equal when their names are, letter by letter.</param>
public readonly record struct PhraseId(string Name)
{
    /// <summary>The name itself.</summary>
    public override string ToString() => Name;
}
