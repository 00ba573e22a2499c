using System.Runtime.CompilerServices;

namespace Explain.Generators.Tests;

/// <summary>Where the repository's own files are.</summary>
internal static class Repository
{
    public static string Root { get; } = Find();

    private static string Find([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "../.."));
}
