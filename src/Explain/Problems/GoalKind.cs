namespace Explain;

/// <summary>What kind of thing is to be found.</summary>
public enum GoalKind
{
    /// <summary>The value of a quantity.</summary>
    Value,

    /// <summary>The bounds of a quantity.</summary>
    Bounds,

    /// <summary>All angles of a polygon.</summary>
    Angles,

    /// <summary>All sides of a polygon.</summary>
    Sides,

    /// <summary>All sides and angles of a triangle.</summary>
    Triangle,

    /// <summary>How many triangles there are.</summary>
    Count,

    /// <summary>A proof of a statement.</summary>
    Proof,

    /// <summary>A construction with ruler and compasses.</summary>
    Construction,

    /// <summary>A quantity found by a stated method.</summary>
    ByMethod,

    /// <summary>Working that leads to a value already printed.</summary>
    Show,

    /// <summary>Something only the topic knows, such as cuts or a region.</summary>
    Topical,
}
