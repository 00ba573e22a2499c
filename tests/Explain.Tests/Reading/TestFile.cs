using System.Runtime.CompilerServices;

namespace Explain.Tests.Reading;

/// <summary>The problem files beside the tests, and what is said of them.</summary>
internal static class TestFile
{
    private static readonly Renderer Uk = new(English.UnitedKingdom);

    public static string Folder(string name, [CallerFilePath] string here = "") => Path.Combine(Path.GetDirectoryName(here)!, name);

    public static IEnumerable<string> Good => Directory.EnumerateFiles(Folder("Good"), "*.yaml").Order(StringComparer.Ordinal);

    /// <summary>The file, its lines as written in the list, and its code.</summary>
    public static IEnumerable<(string File, string Lines, string Code)> Bad =>
        File.ReadAllLines(Path.Combine(Folder("Bad"), "expected.tsv")).Skip(1).Select(l => l.Split('\t')).Select(f => (f[0], f[1], f[2]));

    public static string Text(string path) => File.ReadAllText(path);

    public static Problem Read(string text) => Problem.Read(text, "a.yaml");

    /// <summary>What is said of an error: lines, message, remedy and code.</summary>
    public static string Said(ProblemError error) =>
        $"{string.Join(",", error.Lines)}: {Uk.Say(error.Message)}{(error.Remedy is null ? "" : " | " + Uk.Say(error.Remedy))} [{error.Code}]".Replace('\u00A0', ' ').Replace('\u2009', ' ').Replace('\u202F', ' ');

    public static string[] Said(Problem problem) => [.. problem.Errors.Select(Said)];

    public static string[] Codes(string text) => [.. Read(text).Errors.Select(e => e.Code)];
}
