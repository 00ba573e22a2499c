using Scriban.Runtime;

namespace Explain;

/// <summary>What a template is given for a block: its parts as escaped strings, absent parts as null.</summary>
internal sealed class BlockModel(InlineWriter writer, Func<Block, string> print)
{
    /// <summary>The name of the block's template, without its ending.</summary>
    public static string TemplateOf(Block block) => block switch
    {
        HeadingBlock => "heading",
        ParagraphBlock => "paragraph",
        StepBlock => "step",
        StepTableBlock => "step-table",
        DisplayBlock => "display",
        ListBlock => "list",
        TableBlock => "table",
        FigureBlock => "figure",
        AnswerBlock => "answer",
        RemarkBlock => "remark",
        CautionBlock => "caution",
        _ => throw new ArgumentException(block.GetType().Name, nameof(block)),
    };

    public ScriptObject Of(Block block) => block switch
    {
        HeadingBlock h => Model(("level", h.Level), ("text", Text(h.Text)), ("label", h.Label)),
        ParagraphBlock p => Model(("lead", Text(p.Lead)), ("text", Text(p.Text))),
        StepBlock s => Model(("number", Text(s.Number)), ("title", Text(s.Title)), ("reason", Text(s.Reason)), ("body", Many(s.Body.Select(print)))),
        StepTableBlock t => Model(("headings", Many(t.Headings)), ("rows", Many(t.Rows.Select(Row)))),
        DisplayBlock d => Model(("lines", Many(d.Lines.SelectMany(writer.Display)))),
        ListBlock l => Model(("numbered", l.Numbered), ("entries", Many(l.Entries))),
        TableBlock t => Model(("headings", Many(t.Headings)), ("rows", Many(t.Rows.Select(Many))), ("share", Share(t.Headings.Count)), ("gap", Gap(t.Headings.Count))),
        FigureBlock f => Model(("lead", Text(f.Lead)), ("text", Text(f.Text))),
        AnswerBlock a => Model(("lead", Text(a.Lead)), ("text", Text(a.Text)), ("entries", Many(a.Entries)), ("note", Text(a.Note))),
        RemarkBlock r => Model(("text", Text(r.Text))),
        CautionBlock c => Model(("lead", Text(c.Lead)), ("text", Text(c.Text))),
        _ => throw new ArgumentException(block.GetType().Name, nameof(block)),
    };

    private ScriptObject Row(StepRow row) => Model(("number", row.Number), ("statement", Text(row.Statement)), ("reason", Text(row.Reason)));

    private string? Text(Items<Inline> runs) => runs.Count == 0 ? null : writer.Write(runs);

    private ScriptArray Many(Items<Items<Inline>> items) => Many(items.Select(writer.Write));

    private static ScriptArray Many(IEnumerable<object> items) => [.. items];

    /// <summary>The part of the line that a column may take, of so many.</summary>
    private static string Share(int columns) => Permille(1000 / columns);

    /// <summary>What each column gives up of its share, in em, for gaps of 1 em between them.</summary>
    private static string Gap(int columns) => Permille((1000 * (columns - 1) / columns) + 1);

    private static string Permille(int of) => "0." + of.ToString("000", System.Globalization.CultureInfo.InvariantCulture);

    private static ScriptObject Model(params (string Name, object? Is)[] members)
    {
        ScriptObject model = [];
        foreach ((string name, object? value) in members) model.SetValue(name, value, readOnly: true);
        return model;
    }
}
