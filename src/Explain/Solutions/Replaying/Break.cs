namespace Explain;

/// <summary>Why a claim does not stand any more.</summary>
public enum Break
{
    /// <summary>What it says, or a comparison that it rests on, is false.</summary>
    StatementFails,

    /// <summary>The figure is not as stated or as found: an angle is not acute, three sides do not close, a foot is not between the ends.</summary>
    FigureFactFails,

    /// <summary>Another number of figures fits, or another case holds.</summary>
    OtherCase,

    /// <summary>The steps would be others: a count that shapes them is changed, or bounds have another kind of proof.</summary>
    OtherShape,

    /// <summary>It has no value, or one that no quantity of its kind has: a sine greater than 1, a length that is not positive.</summary>
    OutsideDomain,

    /// <summary>It could not be decided.</summary>
    Undecided,
}
