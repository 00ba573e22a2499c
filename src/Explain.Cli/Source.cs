namespace Explain.Cli;

/// <summary>Where a problem comes from.</summary>
internal static class Source
{
    /// <summary>Whether a name on the command line means standard input.</summary>
    public static bool IsInput(string name) => name == "-";

    /// <summary>Reads a problem. What is wrong inside the file is in its errors.</summary>
    /// <exception cref="IOException">The file cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be read.</exception>
    public static Problem Read(string name, TextReader input) =>
        IsInput(name) ? Problem.Read(input.ReadToEnd(), name) : Problem.Load(name);
}
