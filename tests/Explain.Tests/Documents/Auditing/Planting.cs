namespace Explain.Tests.Documents.Auditing;

/// <summary>Changes one run or one piece of mathematics of a document, the one that is met at a certain count.</summary>
/// <param name="at">Which of those that the changes fit, counted from 0.</param>
/// <param name="inline">The change of a run; null for the run itself.</param>
/// <param name="piece">The change of a piece of mathematics.</param>
internal sealed class Planting(int at, Func<Inline, Inline?> inline, Func<MathPiece, MathPiece?> piece)
{
    private int met;

    /// <summary>What was changed, and into what; null when there were fewer.</summary>
    public (object From, object To)? Planted { get; private set; }

    public Document Of(Document document) => document with { Blocks = [.. document.Blocks.Select(Of)] };

    private Block Of(Block block)
    {
        return block switch
        {
            HeadingBlock h => h with { Text = Of(h.Text) },
            ParagraphBlock p => p with { Lead = Of(p.Lead), Text = Of(p.Text) },
            StepBlock s => s with { Number = Of(s.Number), Title = Of(s.Title), Reason = Of(s.Reason), Body = [.. s.Body.Select(Of)] },
            StepTableBlock t => t with { Rows = [.. t.Rows.Select(r => r with { Statement = Of(r.Statement), Reason = Of(r.Reason) })] },
            DisplayBlock d => d with { Lines = [.. d.Lines.Select(Of)] },
            ListBlock l => l with { Entries = Of(l.Entries) },
            TableBlock t => t with { Headings = Of(t.Headings), Rows = [.. t.Rows.Select(Of)] },
            FigureBlock f => f with { Lead = Of(f.Lead), Text = Of(f.Text) },
            AnswerBlock a => a with { Lead = Of(a.Lead), Text = Of(a.Text), Entries = Of(a.Entries), Note = Of(a.Note) },
            RemarkBlock r => r with { Text = Of(r.Text) },
            CautionBlock c => c with { Lead = Of(c.Lead), Text = Of(c.Text) },
            _ => throw new ArgumentException(block.GetType().Name, nameof(block)),
        };
    }

    private Items<Items<Inline>> Of(Items<Items<Inline>> cells) => [.. cells.Select(Of)];

    private Items<Inline> Of(Items<Inline> runs) => [.. runs.Select(Of)];

    private Inline Of(Inline run) => Taken(run, inline(run)) ?? run switch
    {
        Strong s => new Strong(Of(s.Runs)),
        Emphasis e => new Emphasis(Of(e.Runs)),
        MathRun m => new MathRun(Of(m.Is)),
        _ => run,
    };

    private MathPiece Of(MathPiece of) => Taken(of, piece(of)) ?? of switch
    {
        MathRow r => r with { Of = [.. r.Of.Select(Of)] },
        MathFraction f => new MathFraction(Of(f.Top), Of(f.Bottom)),
        MathRoot r => new MathRoot(Of(r.Of)),
        MathPower p => p with { Base = Of(p.Base) },
        MathFunction f => f with { Of = Of(f.Of) },
        MathBrackets b => new MathBrackets(Of(b.Of)),
        _ => of,
    };

    private T? Taken<T>(T from, T? to)
        where T : class
    {
        if (to is null || met++ != at) return null;
        Planted = (from, to);
        return to;
    }
}
