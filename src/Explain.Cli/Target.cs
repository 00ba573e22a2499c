using System.Text;

namespace Explain.Cli;

/// <summary>Where results go: standard output, or a file for each problem in a folder.</summary>
internal sealed class Target(SolveOptions options, TextWriter output)
{
    private bool written;

    /// <summary>The name, without ending, of the file that a problem's result is written to.</summary>
    public static string NameOf(string file) => Source.IsInput(file) ? "standard-input" : Path.GetFileNameWithoutExtension(file);

    /// <summary>Writes a result, which ends its last line.</summary>
    /// <exception cref="IOException">The file cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be written.</exception>
    public void Write(string file, string text)
    {
        string whole = text.EndsWith('\n') ? text : text + "\n";
        if (options.Into is { } folder)
        {
            Directory.CreateDirectory(folder);
            File.WriteAllText(Path.Combine(folder, NameOf(file) + Ending), whole, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
            return;
        }

        if (written && options.Format != Format.Json) output.Write('\n');
        output.Write(whole);
        written = true;
    }

    private string Ending => options.Format switch
    {
        Format.Latex => ".tex",
        Format.Json => ".json",
        _ => ".md",
    };
}
