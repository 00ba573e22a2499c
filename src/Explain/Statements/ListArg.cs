namespace Explain;

/// <summary>Several arguments, printed as a list with commas and a last 'and'.</summary>
/// <param name="Name">The name under which the wording places it.</param>
/// <param name="Are">What is said.</param>
public sealed record ListArg(string Name, Items<Arg> Are) : Arg(Name);
