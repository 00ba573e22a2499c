namespace Explain;

/// <summary>What a passage is for, in the order of a page.</summary>
public enum PassageUse
{
    /// <summary>The chain of rules, and why this one.</summary>
    Plan,

    /// <summary>How many solutions there are, before any work.</summary>
    Existence,

    /// <summary>Instructions.</summary>
    Construction,

    /// <summary>Why a construction works.</summary>
    WhyItWorks,

    /// <summary>Why there is only one shape.</summary>
    Uniqueness,

    /// <summary>The working.</summary>
    Working,

    /// <summary>Bounds that a part asks for.</summary>
    Bounds,

    /// <summary>A scale drawing.</summary>
    Drawing,

    /// <summary>A check by another rule.</summary>
    Check,

    /// <summary>A check that tests the arithmetic, not the argument.</summary>
    ArithmeticCheck,

    /// <summary>How accurate the answer is, where nobody asked.</summary>
    Accuracy,

    /// <summary>Another way.</summary>
    AnotherWay,

    /// <summary>What if the numbers were others.</summary>
    WhenItChanges,

    /// <summary>What if less were given.</summary>
    LessIsEnough,

    /// <summary>A wrong way, and what it gives.</summary>
    TemptingMistake,
}
