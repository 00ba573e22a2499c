namespace Explain;

/// <summary>A map; its keys with their places, in order.</summary>
internal sealed record ReadMap(Items<(ReadText Key, ReadNode Value)> Entries, Position At) : ReadNode(At);
