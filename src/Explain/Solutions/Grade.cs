namespace Explain;

/// <summary>How a claim is proved.</summary>
public enum Grade
{
    /// <summary>By a rule from earlier claims.</summary>
    Derived,

    /// <summary>As an instance of a library theorem whose hypotheses were met by steps.</summary>
    Theorem,

    /// <summary>Only tested numerically; never an answer or what it rests on.</summary>
    Checked,
}
