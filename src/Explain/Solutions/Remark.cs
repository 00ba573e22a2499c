namespace Explain;

/// <summary>A remark. It is printed only if what it says is verified.</summary>
/// <param name="Says">The words.</param>
/// <param name="OnlyIf">What must hold for the remark to be true; null where it says nothing that other numbers could make false.</param>
public sealed record Remark(Phrase Says, Statement? OnlyIf);
