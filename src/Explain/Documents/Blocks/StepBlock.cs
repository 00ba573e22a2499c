namespace Explain;

/// <summary>A step or several finished together: its number, what it does, why, and the formulas, tables and remarks that belong to it.</summary>
internal sealed record StepBlock(Items<Inline> Number, Items<Inline> Title, Items<Inline> Reason, Items<Block> Body) : Block;
