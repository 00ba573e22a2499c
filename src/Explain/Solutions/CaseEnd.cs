namespace Explain;

/// <summary>How a case ends.</summary>
public enum CaseEnd
{
    /// <summary>It holds: there is such a figure.</summary>
    Holds,

    /// <summary>It cannot be.</summary>
    Impossible,

    /// <summary>It can be, but not with this problem's numbers.</summary>
    NotThisProblem,
}
