using System.CommandLine;
using System.CommandLine.Parsing;

namespace Explain.Cli;

/// <summary>An argument of many values takes a misspelt option for a value; this finds it.</summary>
internal static class Misspelt
{
    public static Action<CommandResult> In(Argument<string[]> argument) => result =>
    {
        foreach (string value in result.GetResult(argument)?.Tokens.Select(t => t.Value) ?? [])
        {
            if (value.StartsWith('-') && !Source.IsInput(value)) result.AddError($"{value} is not an option. Options: {Names(result.Command)}.");
        }
    };

    private static string Names(Command command) => command.Options.Count == 0 ? "none" : string.Join(", ", command.Options.Select(o => o.Name));
}
