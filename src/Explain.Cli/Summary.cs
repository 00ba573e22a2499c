using System.Globalization;

namespace Explain.Cli;

/// <summary>Says on standard error how the files of a batch ended: a line each, and a line for all.</summary>
internal static class Summary
{
    private const int LongestTitle = 40;

    public static void Write(IReadOnlyList<Ending> ends, int files, TextWriter error)
    {
        int name = ends.Max(e => e.File.Length), title = ends.Max(e => Short(e.Title).Length);
        foreach (Ending end in ends) error.WriteLine($"{end.File.PadRight(name)}  {Short(end.Title).PadRight(title)}  {Outcome(end)}");
        string[] counts = [.. ends.GroupBy(e => e.Code).OrderBy(g => g.Key).Select(g => $"{Count(g.Count())} {Word(g.Key)}")];
        string left = ends.Count < files ? $", {Count(files - ends.Count)} not reached" : "";
        error.WriteLine($"{Count(files)} files: {string.Join(", ", counts)}{left}.");
    }

    private static string Outcome(Ending end) => end.Why is null ? Word(end.Code) : $"{Word(end.Code)}: {end.Why}";

    private static string Word(ExitCode code) => code switch
    {
        ExitCode.Solved => "ok",
        ExitCode.AtFault => "refused",
        ExitCode.Unverified => "failed",
        _ => "not read or written",
    };

    /// <summary>A title is the user's own text: on one line, and not longer than the line has room for.</summary>
    private static string Short(string title)
    {
        string line = string.Join(' ', title.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        return line.Length <= LongestTitle ? line : line[..(char.IsHighSurrogate(line[LongestTitle - 2]) ? LongestTitle - 2 : LongestTitle - 1)] + "…";
    }

    private static string Count(int number) => number.ToString(CultureInfo.InvariantCulture);
}
