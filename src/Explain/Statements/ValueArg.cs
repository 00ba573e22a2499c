namespace Explain;

/// <summary>A value as it stands in working: in full where it ends, otherwise cut and followed by dots.</summary>
/// <param name="Name">The name under which the wording places it.</param>
/// <param name="Is">What is said.</param>
public sealed record ValueArg(string Name, Value Is) : Arg(Name);
