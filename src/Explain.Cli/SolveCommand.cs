using System.CommandLine;
using System.CommandLine.Parsing;

namespace Explain.Cli;

/// <summary>The command <c>solve FILE…</c>.</summary>
internal sealed class SolveCommand
{
    private readonly Argument<string[]> files = new("FILE") { Description = "Problem files; - is standard input", Arity = ArgumentArity.OneOrMore };
    private readonly Choice<Form> form = new("--form", "What to print",
        ("worked-solution", Form.WorkedSolution), ("question", Form.Question), ("answer", Form.Answer));
    private readonly Choice<Format> output = new("--output", "The notation; json prints answers, one object a line",
        ("markdown", Format.Markdown), ("latex", Format.Latex), ("json", Format.Json));
    private readonly Choice<English> english = new("--english", "The English", ("uk", English.UnitedKingdom), ("us", English.UnitedStates));
    private readonly Choice<Detail> detail = new("--detail", "How much of the working",
        ("standard", Detail.Standard), ("brief", Detail.Brief), ("full", Detail.Full));
    private readonly Option<string?> into = new("--into") { Description = "The folder to write results to, one file for each problem", HelpName = "DIR" };
    private readonly Option<bool> debug = new("--debug") { Description = "Show a fault of the program whole, to be reported" };

    public Command Build(Streams streams)
    {
        Command command = new("solve", "Solve problems and print the whole argument") { files, form.Option, output.Option, english.Option, detail.Option, into, debug };
        command.Validators.Add(Misspelt.In(files));
        command.Validators.Add(JsonHasAnswersOnly);
        command.Validators.Add(InputOnce);
        command.SetAction((parsed, cancel) => Task.Run(() => (int)new Batch(OptionsOf(parsed), streams, new Solver()).Run(cancel), CancellationToken.None));
        return command;
    }

    private SolveOptions OptionsOf(ParseResult parsed) => new(
        parsed.GetValue(files)!,
        form.In(parsed),
        output.In(parsed),
        new() { English = english.In(parsed), Detail = detail.In(parsed) },
        parsed.GetValue(into),
        parsed.GetValue(debug));

    private void JsonHasAnswersOnly(CommandResult result)
    {
        if (result.Errors.Any() || result.Children.Any(c => c.Errors.Any())) return;
        if (output.In(result) == Format.Json && form.In(result) != Form.Answer) result.AddError("--output json prints answers only: add --form answer.");
    }

    private void InputOnce(CommandResult result)
    {
        string[] names = [.. result.GetResult(files)?.Tokens.Select(t => t.Value) ?? []];
        if (names.Count(Source.IsInput) > 1) result.AddError("- (standard input) can be read only once.");
        if (result.GetResult(into) is null) return;
        foreach (IGrouping<string, string> same in names.GroupBy(Target.NameOf).Where(g => g.Count() > 1))
        {
            result.AddError($"{string.Join(" and ", same)} would be written to one and the same file: solve them in two runs, or rename one.");
        }
    }
}
