namespace Explain.Generators;

/// <summary>A rule named in a comment, to be looked up when all rules are known.</summary>
internal sealed record Mention(ReasonModel Reason, Place At);
