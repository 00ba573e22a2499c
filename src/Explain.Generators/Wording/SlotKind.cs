namespace Explain.Generators;

/// <summary>The kinds of argument that a wording can place.</summary>
internal enum SlotKind
{
    Named,
    Statement,
    Formula,
    Symbol,
    Value,
    Steps,
    Count,
    Phrase,
    Text,
    List,
}
