namespace Explain;

/// <summary>Something to be said, as an id with arguments; its words live in the wording files, one for each English.</summary>
/// <param name="Id">Which phrase.</param>
/// <param name="Args">Its arguments, each under the name that the wording uses.</param>
public sealed record Phrase(PhraseId Id, Items<Arg> Args);
