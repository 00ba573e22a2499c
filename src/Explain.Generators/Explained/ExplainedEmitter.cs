namespace Explain.Generators;

/// <summary>Writes the explained twins of the methods of one type: <c>Worked</c>, <c>Formulas</c> and <c>Rules</c>.</summary>
internal static class ExplainedEmitter
{
    private const string Formula = "global::Explain.ExplainedFormula";

    public static string Emit(Group<ExplainedModel> group) => new SourceWriter().Part(group.In, writer =>
    {
        bool isPublic = group.Models.Any(m => m.IsPublic);
        writer.Line("/// <summary>The explained methods with their steps.</summary>").Open(Access(isPublic) + " static class Worked");
        foreach (ExplainedModel model in group.Models) Worked(writer, model);
        writer.Close().Line("").Line("/// <summary>The explained methods as data.</summary>").Open(Access(isPublic) + " static class Formulas");
        foreach (ExplainedModel model in group.Models) Data(writer, model);
        writer.Close().Line("").Line("/// <summary>The explained methods, to be passed to a rule book.</summary>");
        writer.Line($"{Access(isPublic)} static global::Explain.Items<{Formula}> Rules => [{string.Join(", ", group.Models.Select(m => "Formulas." + Identifier.Escape(m.Property)))}];");
    }).ToString();

    private static string Access(bool isPublic) => isPublic ? "public" : "internal";

    private static void Worked(SourceWriter writer, ExplainedModel model)
    {
        string formula = "Formulas." + Identifier.Escape(model.Property);
        string parameters = string.Join(", ", model.Parameters.Select(p => p.Type + " " + Identifier.Escape(p.Name)));
        string values = string.Join(", ", model.Parameters.Select(p => Identifier.Escape(p.Name)));
        string quantities = string.Join(", ", model.Parameters.Select((p, i) => $"{formula}.Parameters[{Number.Plain(i)}].Of({Identifier.Escape(p.Name)})"));
        Title(writer, model);
        writer.Line($"{Access(model.IsPublic)} static global::Explain.Explained<double> {Identifier.Escape(model.Method)}({parameters}) =>");
        writer.Line($"    new({model.In.FullName}.{Identifier.Escape(model.Method)}({values}), {formula}, [{quantities}]);");
    }

    /// <summary>Each formula has a holder of its own, so that formulas of two types may use one another.</summary>
    private static void Data(SourceWriter writer, ExplainedModel model)
    {
        Title(writer, model);
        writer.Line($"{Access(model.IsPublic)} static {Formula} {Identifier.Escape(model.Property)} => {model.Property}Holder.Value;").Line("");
        writer.Open($"private static class {model.Property}Holder");
        writer.Line($"internal static readonly {Formula} Value = new({Identifier.Literal(model.Method)}, {Identifier.Literal(model.Title)},");
        writer.Line("    [" + string.Join(", ", model.Parameters.Select(p => $"new({Identifier.Literal(p.Name)}, {LineEmitter.Letter(p.Symbol)}, {p.Symbol.Of!.Emit()})")) + "],");
        writer.Line($"    {LineEmitter.Letter(model.Result)}, {model.Result.Of!.Emit()},").Line("    [");
        foreach (LineModel line in model.Lines) writer.Line("        " + LineEmitter.Emit(line) + ",");
        writer.Line("    ]);").Close();
    }

    private static void Title(SourceWriter writer, ExplainedModel model) =>
        writer.Line($"/// <summary>{(model.Title.Length == 0 ? "The formula " + model.Method + "." : model.Title.Replace("&", "&amp;").Replace("<", "&lt;"))}</summary>");
}
