namespace Explain.Cli;

/// <summary>How a run ended, as scripts see it.</summary>
internal enum ExitCode
{
    /// <summary>All is solved.</summary>
    Solved = 0,

    /// <summary>Of two or more files some failed.</summary>
    SomeFailed = 1,

    /// <summary>The one file is at fault, or the arguments are.</summary>
    AtFault = 2,

    /// <summary>A solution failed its own verification, or the program itself is at fault.</summary>
    Unverified = 3,

    /// <summary>A file could not be read or written.</summary>
    Unusable = 4,

    /// <summary>The run was cancelled.</summary>
    Cancelled = 130,
}
