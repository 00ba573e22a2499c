namespace Explain;

/// <summary>What a quantity does when one measurement grows and the others stay, anywhere in a box.</summary>
internal enum Direction
{
    /// <summary>Neither is proved.</summary>
    Neither,

    /// <summary>It never falls.</summary>
    Rises,

    /// <summary>It never rises.</summary>
    Falls,
}
