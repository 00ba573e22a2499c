namespace Explain;

/// <summary>How tightly a piece holds together, the loosest first: what needs brackets inside what.</summary>
internal enum MathLevel
{
    Relation,
    Sum,
    Product,
    Atom,
}
