namespace Explain.Cli.Tests;

/// <summary>One run of the command inside the test, with what it printed.</summary>
internal sealed record Run(int Code, string Out, string Error)
{
    public static async Task<Run> Of(string[] args, string input = "")
    {
        StringWriter output = new() { NewLine = "\n" }, error = new() { NewLine = "\n" };
        int code = await Application.Run(args, new Streams(new StringReader(input), output, error));
        return new(code, output.ToString(), error.ToString());
    }
}
