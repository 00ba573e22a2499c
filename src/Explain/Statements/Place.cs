namespace Explain;

/// <summary>How objects lie: parallel, in line in order, foot of a perpendicular, acute, convex …</summary>
/// <param name="Kind">What is said.</param>
/// <param name="Of">The objects, in the order that <see cref="PlaceKind"/> gives.</param>
public sealed record Place(PlaceKind Kind, Items<Named> Of) : Statement;
