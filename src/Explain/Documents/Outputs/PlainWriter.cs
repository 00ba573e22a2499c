namespace Explain;

/// <summary>Runs in plain text.</summary>
internal sealed class PlainWriter : InlineWriter
{
    public static readonly PlainWriter Text = new();

    private PlainWriter()
    {
    }

    public override string Folder => "text";

    public override IEnumerable<string> Display(MathPiece line) => [MathPlain.Write(line)];

    public override string Visible(string text) => text;

    protected override string Words(string text) => text;

    protected override string User(string text) => text;

    protected override string Mathematics(MathPiece piece) => MathPlain.Write(piece);

    protected override string Strong(string inner) => inner;

    protected override string Emphasis(string inner) => inner;
}
