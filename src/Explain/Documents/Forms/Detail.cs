namespace Explain;

/// <summary>How much of one and the same working is shown. No geometrical reason and no answer depends on it.</summary>
public enum Detail
{
    /// <summary>Algebra in one line, no values of functions, no remarks.</summary>
    Brief,

    /// <summary>As in a textbook.</summary>
    Standard,

    /// <summary>Every value that is put in, with where it comes from.</summary>
    Full,
}
