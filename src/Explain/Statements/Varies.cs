namespace Explain;

/// <summary>A quantity rises, or falls, as one symbol rises, all else kept, everywhere between the bounds.</summary>
/// <param name="What">The quantity.</param>
/// <param name="With">The symbol that varies.</param>
/// <param name="Increases">Whether it rises.</param>
public sealed record Varies(Expr What, Symbol With, bool Increases) : Statement;
