using System.CommandLine;
using System.CommandLine.Parsing;

namespace Explain.Cli;

/// <summary>The commands <c>topics</c> and <c>start TOPIC</c>.</summary>
internal static class TopicCommands
{
    public static Command List(Streams streams)
    {
        Command command = new("topics", "List the kinds of problem that can be solved");
        command.SetAction(_ =>
        {
            Renderer renderer = new();
            foreach (Topic topic in Topics.Standard.All)
            {
                streams.Out.WriteLine(topic.Id.Name);
                if (topic.Words is not { } words) continue;
                streams.Out.WriteLine("  figure: " + renderer.Say(words.Figure));
                streams.Out.WriteLine("  given:  " + renderer.Say(words.Given));
                streams.Out.WriteLine("  find:   " + renderer.Say(words.Find));
            }
        });
        return command;
    }

    public static Command Start(Streams streams)
    {
        Argument<string[]> name = new("TOPIC") { Description = "The name of a topic, as topics lists it; quotation marks are not needed", Arity = ArgumentArity.OneOrMore };
        Command command = new("start", "Print a problem file of a topic to begin with") { name };
        command.Validators.Add(Misspelt.In(name));
        command.Validators.Add(result => Known(result, name));
        command.SetAction(parsed => streams.Out.Write(Find(parsed.GetValue(name)!)!.Starter));
        return command;
    }

    private static void Known(CommandResult result, Argument<string[]> name)
    {
        string[] words = [.. result.GetResult(name)?.Tokens.Select(t => t.Value) ?? []];
        if (words.Length == 0 || words.Any(w => w.StartsWith('-')) || Find(words) is not null) return;
        result.AddError($"{string.Join(' ', words)} is not a topic. Topics: {string.Join(", ", Topics.Standard.All.Select(t => t.Id.Name))}.");
    }

    private static Topic? Find(string[] words) => Topics.Standard.Find(new(string.Join(' ', words)));
}
