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

    protected override string Mathematics(MathPiece piece) => piece switch
    {
        MathRow { Of: [MathNumber n, MathUnit { Is.IsAngle: false } u] } => "$" + MathTex.Write(n) + "$" + TexSigns.UnitText(u.Is),
        MathRow row when row.Of.Any(IsSentence) => string.Concat(Parts(row).Select(Part)),
        _ => "$" + MathTex.Write(piece) + "$",
    };

    /// <summary>A quantity of several words: as mathematics its line could not be broken.</summary>
    private static bool IsSentence(MathPiece piece) => piece is MathRow { Of: [MathWords { Text: var words }, ..] } && words.TrimEnd().Contains(' ');

    private static string Part(MathPiece part) => part is MathWords words ? LatexEscape.Text(words.Text) : "$" + MathTex.Write(part) + "$";

    /// <summary>The words of such quantities, and what stands between them.</summary>
    private static IEnumerable<MathPiece> Parts(MathRow row)
    {
        List<MathPiece> between = [];
        foreach (MathPiece piece in row.Of.SelectMany(p => IsSentence(p) ? ((MathRow)p).Of : [p]))
        {
            if (piece is not MathWords) between.Add(piece);
            else
            {
                if (between.Count > 0) yield return new MathRow([.. between], row.Level);
                between.Clear();
                yield return piece;
            }
        }

        if (between.Count > 0) yield return new MathRow([.. between], row.Level);
    }

    public override string Bold(Items<Inline> runs) => Bold(Write(runs));

    protected override string Strong(string inner) => @"\textbf{" + Bold(inner) + "}";

    private static string Bold(string inner) => (inner.Contains('$', StringComparison.Ordinal) ? @"\boldmath " : "") + inner;

    protected override string Emphasis(string inner) => @"\emph{" + inner + "}";
}
