namespace Explain;

/// <summary>Runs in LaTeX.</summary>
/// <param name="points">The names of the points of the figure: the user's AC is set as mathematics when A and C are points.</param>
internal sealed class LatexWriter(Items<string> points) : InlineWriter
{
    private readonly LatexUserText user = new(points);

    public override string Folder => "latex";

    public override IEnumerable<string> Display(MathPiece line) => LatexLines.Break(line);

    public override string Visible(string text) => LatexMarkup.Without(text);

    protected override string Words(string text) => LatexEscape.Text(text);

    protected override string User(string text) => user.Write(text);

    protected override string Mathematics(MathPiece piece) => piece is MathRow { Of: [MathNumber n, MathUnit { Is.IsAngle: false } u] }
        ? "$" + MathTex.Write(n) + "$" + TexSigns.UnitText(u.Is)
        : "$" + MathTex.Write(piece) + "$";

    public override string Bold(Items<Inline> runs) => Bold(Write(runs));

    protected override string Strong(string inner) => @"\textbf{" + Bold(inner) + "}";

    private static string Bold(string inner) => (inner.Contains('$', StringComparison.Ordinal) ? @"\boldmath " : "") + inner;

    protected override string Emphasis(string inner) => @"\emph{" + inner + "}";
}
