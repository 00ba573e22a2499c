namespace Explain.Generators;

/// <summary>A parameter of a phrase method: one placeholder.</summary>
/// <param name="Name">Its name, as the wording uses it.</param>
/// <param name="Type">Its type, written in full.</param>
/// <param name="Kind">What kind of argument it becomes.</param>
/// <param name="Item">For a list, what each item becomes.</param>
internal sealed record PhraseParameter(string Name, string Type, SlotKind Kind, SlotKind? Item);
