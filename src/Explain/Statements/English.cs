namespace Explain;

/// <summary>The Englishes in which the product prints and reads.</summary>
public enum English
{
    /// <summary>United Kingdom: sine rule, angle ABC, ×.</summary>
    UnitedKingdom,

    /// <summary>United States: law of sines, ∠ABC, ·.</summary>
    UnitedStates,
}
