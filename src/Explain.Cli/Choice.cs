using System.CommandLine;
using System.CommandLine.Parsing;

namespace Explain.Cli;

/// <summary>Options with a closed list of values.</summary>
internal static class Choice
{
    /// <summary>An option that takes one of the words, and the first of them when it is left out.</summary>
    public static Option<T> Of<T>(string name, string description, params (string Word, T Value)[] words)
    {
        string list = string.Join(", ", words.Select(w => w.Word));
        Option<T> option = new(name)
        {
            Description = $"{description}: {list}",
            DefaultValueFactory = _ => words[0].Value,
            CustomParser = result => Read(result, name, list, words),
        };
        option.CompletionSources.Add([.. words.Select(w => w.Word)]);
        return option;
    }

    private static T? Read<T>(ArgumentResult result, string name, string list, (string Word, T Value)[] words)
    {
        string typed = result.Tokens[^1].Value;
        foreach ((string word, T value) in words)
        {
            if (word == typed) return value;
        }

        result.AddError($"{name} {typed}: there is no such value. Values: {list}.");
        return default;
    }
}
