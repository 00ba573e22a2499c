using System.Text;

namespace Explain.Cli;

/// <summary>What a run reads from and writes to. Always UTF-8 without a byte-order mark and with plain line feeds, whatever the system does.</summary>
internal sealed record Streams(TextReader In, TextWriter Out, TextWriter Error)
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    public static TextReader StandardInput() => new StreamReader(Console.OpenStandardInput(), Utf8);

    public static TextWriter StandardOutput() => Writer(Console.OpenStandardOutput());

    public static TextWriter StandardError() => Writer(Console.OpenStandardError());

    private static StreamWriter Writer(Stream stream) => new(stream, Utf8) { AutoFlush = true, NewLine = "\n" };
}
