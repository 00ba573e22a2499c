namespace Explain.Generators;

/// <summary>Writes the bodies of the phrase methods of one type.</summary>
internal static class PhraseEmitter
{
    public static string Emit(Group<PhraseModel> group) => new SourceWriter().Part(group.In, writer =>
    {
        foreach (PhraseModel phrase in group.Models)
        {
            string parameters = string.Join(", ", phrase.Parameters.Select(p => p.Type + " " + Identifier.Escape(p.Name)));
            string arguments = string.Join(", ", phrase.Parameters.Select(Argument));
            writer.Line($"{phrase.Modifiers} global::Explain.Phrase {Identifier.Escape(phrase.Method)}({parameters}) =>");
            writer.Line($"    new(new global::Explain.PhraseId({Identifier.Literal(phrase.Id)}), [{arguments}]);");
        }
    }).ToString();

    private static string Argument(PhraseParameter parameter)
    {
        string name = Identifier.Literal(parameter.Name), value = Identifier.Escape(parameter.Name);
        if (parameter.Kind != SlotKind.List) return New(parameter.Kind, name, parameter is { Kind: SlotKind.Steps, Item: null } ? "[" + value + "]" : value);
        string item = New(parameter.Item!.Value, name, "item"), select = $"global::System.Linq.Enumerable.Select<{Item(parameter.Type)}, global::Explain.Arg>";
        return $"new global::Explain.ListArg({name}, [.. {select}({value}, item => {item})])";
    }

    /// <summary>The item's type in the full name of a list of items.</summary>
    private static string Item(string list) => list.Substring(list.IndexOf('<') + 1).TrimEnd('>');

    private static string New(SlotKind kind, string name, string value) => "new global::Explain." + kind switch
    {
        SlotKind.Named => "NamedArg",
        SlotKind.Statement => "StatementArg",
        SlotKind.Formula or SlotKind.Symbol => "FormulaArg",
        SlotKind.Value => "ValueArg",
        SlotKind.Steps => "StepArg",
        SlotKind.Count => "CountArg",
        SlotKind.Phrase => "PhraseArg",
        _ => "TextArg",
    } + "(" + name + ", " + value + ")";
}
