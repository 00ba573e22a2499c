namespace Explain;

/// <summary>The parts of a formula that move with a measurement, innermost first.</summary>
/// <param name="Are">The parts.</param>
public sealed record Links(Items<Link> Are) : RoleValue;
