using System.CommandLine;

namespace Explain.Cli;

/// <summary>The command line as a whole.</summary>
internal static class Application
{
    public static async Task<int> Run(string[] args, Streams streams)
    {
        RootCommand root = new("Solves the practical geometry a teacher sets and prints the whole argument.")
        {
            new SolveCommand().Build(streams),
            TopicCommands.List(streams),
            TopicCommands.Start(streams),
        };
        ParseResult parsed = root.Parse(args);
        if (parsed.Errors.Count > 0) return Refuse(parsed, streams.Error);
        return await parsed.InvokeAsync(new InvocationConfiguration { Output = streams.Out, Error = streams.Error });
    }

    /// <summary>The parser would leave with 1, which here means a batch in which some failed.</summary>
    private static int Refuse(ParseResult parsed, TextWriter error)
    {
        foreach (string message in parsed.Errors.Select(e => e.Message).Distinct()) error.WriteLine($"explain: {message}");
        error.WriteLine("See explain --help.");
        return (int)ExitCode.AtFault;
    }
}
