namespace Explain;

/// <summary>An object of the figure: a point, a line, a polygon, an angle by name.</summary>
/// <param name="Name">The name under which the wording places it.</param>
/// <param name="Is">What is said.</param>
public sealed record NamedArg(string Name, Named Is) : Arg(Name);
