namespace Explain;

/// <summary>What a formula speaks of: a letter, or a quantity of a figure. Lengths and angles derive from it.</summary>
public abstract record Symbol;
