namespace Explain;

/// <summary>What can be said of a figure. A closed set: one grammar reads and prints it, one row a statement.</summary>
public abstract record Statement;
