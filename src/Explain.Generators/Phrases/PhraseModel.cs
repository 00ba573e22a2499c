namespace Explain.Generators;

/// <summary>A declared phrase.</summary>
/// <param name="In">The type that declares it.</param>
/// <param name="Id">Its id in the wording files.</param>
/// <param name="Modifiers">The modifiers that its body must repeat.</param>
/// <param name="Method">The method's name.</param>
/// <param name="Parameters">Its placeholders.</param>
internal sealed record PhraseModel(TypeModel In, string Id, string Modifiers, string Method, EquatableArray<PhraseParameter> Parameters);
