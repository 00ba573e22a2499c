using System.CommandLine;
using System.CommandLine.Parsing;

namespace Explain.Cli;

/// <summary>An option that takes one word of a closed list, and the first of them when it is left out.</summary>
internal sealed class Choice<T>
{
    private readonly string list;
    private readonly (string Word, T Value)[] words;

    public Choice(string name, string description, params (string Word, T Value)[] words)
    {
        (this.words, list) = (words, string.Join(", ", words.Select(w => w.Word)));
        Option = new(name) { Description = $"{description}: {list}", HelpName = name.TrimStart('-').ToUpperInvariant(), DefaultValueFactory = _ => words[0].Word };
        Option.Validators.Add(IsOneOf);
        Option.CompletionSources.Add([.. words.Select(w => w.Word)]);
    }

    public Option<string> Option { get; }

    public T In(ParseResult parsed) => Value(parsed.GetValue(Option));

    public T In(CommandResult result) => Value(result.GetValue(Option));

    private T Value(string? word) => word is null ? words[0].Value : words.First(w => w.Word == word).Value;

    private void IsOneOf(OptionResult result)
    {
        if (result.Tokens is [.., var typed] && words.All(w => w.Word != typed.Value)) result.AddError($"{Option.Name} {typed.Value}: there is no such value. Values: {list}.");
    }
}
