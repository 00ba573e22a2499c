namespace Explain;

/// <summary>
/// Declares a phrase: a static partial method that returns <see cref="Phrase"/>, whose parameters are the placeholders that its
/// wordings may use. The generator writes the body and checks every wording file.
/// </summary>
/// <param name="id">The phrase's id in the wording files.</param>
[AttributeUsage(AttributeTargets.Method)]
public sealed class PhraseAttribute(string id) : Attribute
{
    /// <summary>The phrase's id.</summary>
    public string Id { get; } = id;
}
