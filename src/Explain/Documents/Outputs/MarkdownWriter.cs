namespace Explain;

/// <summary>Runs in Markdown: mathematics that fits in a line is plain text, other mathematics is TeX.</summary>
internal sealed class MarkdownWriter : InlineWriter
{
    public override string Folder => "markdown";

    public override IEnumerable<string> Display(MathPiece line) => [MathTex.Write(line)];

    public override string Line(Items<Inline> runs) => MarkdownEscape.AtStart(Write(runs));

    public override string Visible(string text) => MarkdownMarkup.Without(text);

    protected override string Words(string text) => MarkdownEscape.Text(text);

    protected override string User(string text) => MarkdownEscape.Text(text);

    protected override string Mathematics(MathPiece piece) => MathTex.IsTall(piece)
        ? "$" + MathTex.Write(piece).Replace(@"\frac", @"\dfrac", StringComparison.Ordinal) + "$"
        : MarkdownEscape.Text(MathPlain.Write(piece));

    protected override string Strong(string inner) => "**" + inner + "**";

    protected override string Emphasis(string inner) => "*" + inner + "*";
}
