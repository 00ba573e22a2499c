namespace Explain;

/// <summary>What is done to both sides of an equation.</summary>
public enum MoveKind
{
    /// <summary>The equation to begin with.</summary>
    Start,

    /// <summary>Add to both sides.</summary>
    Add,

    /// <summary>Subtract from both sides.</summary>
    Subtract,

    /// <summary>Multiply both sides.</summary>
    Multiply,

    /// <summary>Divide both sides.</summary>
    Divide,

    /// <summary>Take both sides the other way up.</summary>
    Invert,

    /// <summary>Exchange the two sides.</summary>
    Exchange,

    /// <summary>Take the square root of both sides.</summary>
    Root,

    /// <summary>Square both sides.</summary>
    Square,

    /// <summary>Take the inverse function of both sides.</summary>
    Inverse,

    /// <summary>Take a common factor out of a sum.</summary>
    Factor,

    /// <summary>Multiply out brackets.</summary>
    Expand,

    /// <summary>Collect like terms.</summary>
    Collect,

    /// <summary>The unit that every term has is left out.</summary>
    LeaveOutUnit,
}
