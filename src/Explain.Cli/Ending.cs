namespace Explain.Cli;

/// <summary>How one file ended.</summary>
/// <param name="File">The file, as typed.</param>
/// <param name="Title">Its heading; empty where it has none.</param>
/// <param name="Code">The exit code that it would give alone.</param>
/// <param name="Why">The first code of what is wrong with it; null where nothing is.</param>
internal sealed record Ending(string File, string Title, ExitCode Code, string? Why = null);
