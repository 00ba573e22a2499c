using Scriban.Runtime;

namespace Explain;

/// <summary>What a template is given for a block: its parts as escaped strings between marks, absent parts as null.</summary>
internal sealed class BlockModel(InlineWriter writer, Marks marks, Func<Block, string> print)
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
        HeadingBlock h => Model(("level", h.Level), ("text", Bold(h.Text)), ("label", h.Label)),
        ParagraphBlock p => Model(("lead", Bold(p.Lead)), ("text", p.Lead.Count > 0 ? Text(p.Text) : marks.Put(writer.Line(p.Text)))),
        StepBlock s => Model(("number", Bold(s.Number)), ("title", Bold(s.Title)), ("reason", Text(s.Reason)), ("body", Many(s.Body.Select(print)))),
        StepTableBlock t => Model(("headings", Many(t.Headings)), ("rows", Many(t.Rows.Select(Row)))),
        DisplayBlock d => Model(("lines", Many(d.Lines.SelectMany(writer.Display).Select(marks.Put)))),
        ListBlock l => Model(("numbered", l.Numbered), ("entries", Many(l.Entries.Select(writer.Line).Select(marks.Put)))),
        TableBlock t => Model(("headings", Many(t.Headings)), ("rows", Many(t.Rows.Select(Many))), ("columns", Many(ColumnWidths.Of(t))), ("gaps", t.Headings.Count - 1)),
        FigureBlock f => Model(("lead", Bold(f.Lead)), ("text", Text(f.Text))),
        AnswerBlock a => Model(("lead", Bold(a.Lead)), ("text", Text(a.Text)), ("entries", Many(a.Entries)), ("note", Text(a.Note))),
        RemarkBlock r => Model(("text", Text(r.Text))),
        CautionBlock c => Model(("lead", Bold(c.Lead)), ("text", Text(c.Text))),
        _ => throw new ArgumentException(block.GetType().Name, nameof(block)),
    };

    /// <summary>What the template of the page is given: its blocks, printed.</summary>
    public ScriptObject OfPage(IEnumerable<string> blocks) => Model(("blocks", Many(blocks)));

    private ScriptObject Row(StepRow row) => Model(("number", marks.Put(row.Number)), ("statement", Text(row.Statement)), ("reason", Text(row.Reason)));

    private string? Text(Items<Inline> runs) => runs.Count == 0 ? null : marks.Put(writer.Write(runs));

    private string? Bold(Items<Inline> runs) => runs.Count == 0 ? null : marks.Put(writer.Bold(runs));

    private ScriptArray Many(Items<Items<Inline>> items) => Many(items.Select(writer.Write).Select(marks.Put));

    private static ScriptArray Many(IEnumerable<object> items) => [.. items];

    private static ScriptObject Model(params (string Name, object? Is)[] members)
    {
        ScriptObject model = [];
        foreach ((string name, object? value) in members) model.SetValue(name, value, readOnly: true);
        return model;
    }
}
