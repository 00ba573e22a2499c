namespace Explain.Generators;

/// <summary>An argument that a wording may place, and must mention when it is a condition of a reason.</summary>
internal sealed record Slot(string Name, SlotKind Kind, bool IsCondition)
{
    /// <summary>Whether singular and plural can be chosen by it.</summary>
    public bool Counts => Kind is SlotKind.Count or SlotKind.List or SlotKind.Steps;

    /// <summary>Whether it is an object of the figure, which the story may have a name for.</summary>
    public bool IsObject => Kind is SlotKind.Named or SlotKind.Symbol;
}
