namespace Explain;

/// <summary>An object of a figure that has a name.</summary>
public abstract record Named;
