namespace Explain;

/// <summary>A page as blocks.</summary>
/// <param name="Blocks">The blocks, in order.</param>
/// <param name="Points">The names of the points of the figure, so that an output can tell AC from a word of the user's.</param>
internal sealed record Document(Items<Block> Blocks, Items<string> Points);
