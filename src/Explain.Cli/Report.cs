using System.Globalization;

namespace Explain.Cli;

/// <summary>Says on standard error what is wrong with a file: where, what, what to do, and a code.</summary>
internal sealed class Report(string file, Renderer renderer, TextWriter error)
{
    public void Errors(Refused refused)
    {
        foreach (ProblemError e in refused.Errors) Say(file + LinesOf(e.Lines), renderer.Say(e.Message), e.Remedy is null ? null : renderer.Say(e.Remedy), e.Code);
        if (refused.More > 0) error.WriteLine($"{file}: and {refused.More.ToString(CultureInfo.InvariantCulture)} more.");
    }

    public void Warnings(Solution solution)
    {
        foreach (Warning w in solution.Warnings) Say(file + ", warning", renderer.Say(w.Message), null, w.Code);
    }

    public void Findings(Failed failed) => Findings(failed.Findings, "the solution failed its own verification, so there is no answer. Please report it.");

    public void Findings(PrintAuditException audit) =>
        Findings(audit.Findings, "the page would hold something that is not in its solution, so it is not printed. Please report it, or correct the template that brings it.");

    private void Findings(Items<Finding> findings, string what)
    {
        error.WriteLine($"{file}: {what}");
        foreach (Finding f in findings) error.WriteLine($"  {f.Test}{(f.Claim is { } claim ? $", {claim}" : "")}: {f.Detail}");
    }

    /// <summary>line 5; lines 5 and 6; lines 4 to 6; lines 4, 6 and 9; with a comma before.</summary>
    internal static string LinesOf(Items<int> lines)
    {
        string[] text = [.. lines.Select(l => l.ToString(CultureInfo.InvariantCulture))];
        return text switch
        {
            [] => "",
            [var only] => $", line {only}",
            [var first, var second] => $", lines {first} and {second}",
            _ when lines[^1] - lines[0] == lines.Count - 1 => $", lines {text[0]} to {text[^1]}",
            _ => $", lines {string.Join(", ", text[..^1])} and {text[^1]}",
        };
    }

    private void Say(string place, string message, string? remedy, string code)
    {
        string what = $"{place}: {Ended(message)}";
        error.WriteLine(remedy is null ? $"{what}  [{code}]" : $"{what}\n  {Ended(Capital(remedy))}  [{code}]");
    }

    private static string Ended(string text) => text.Length == 0 || text[^1] is '.' or '?' or '!' ? text : text + ".";

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
