namespace Explain;

/// <summary>What one measurement is at a place in a box: exactly, or as narrow as it could be found.</summary>
internal sealed record Located(Symbol Of, Value At);
