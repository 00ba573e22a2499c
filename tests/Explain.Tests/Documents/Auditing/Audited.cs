namespace Explain.Tests.Documents.Auditing;

/// <summary>Pages of the demo problems as documents, with what the audit finds on them.</summary>
internal sealed class Audited
{
    private readonly Renderer renderer;
    private readonly EvidenceBook book;

    public Audited(Solution solution, English english = English.UnitedKingdom, Form form = Form.WorkedSolution)
    {
        renderer = new Renderer(english);
        Page page = new(solution, WordingTable.For(english), new MathStyle(english, Comma: false, Figures: 4), Detail.Standard);
        book = new EvidenceBook(page);
        Document = new([.. form == Form.Answer ? AnswerForm.Blocks(page) : WorkedSolutionForm.Blocks(page)], FigurePoints.Of(solution.Of));
    }

    public Document Document { get; }

    /// <summary>What is found on a document; empty when it is printed.</summary>
    public Items<Finding> Findings(Document document)
    {
        try
        {
            Assert.NotEmpty(renderer.Print(document, Output.Markdown, book));
            return [];
        }
        catch (PrintAuditException audit)
        {
            Assert.All(audit.Findings, f => Assert.Equal("V8", f.Test));
            return audit.Findings;
        }
    }

    /// <summary>Every change of one run or piece that fits, one after the other, with what is found.</summary>
    public IEnumerable<(object From, object To, Items<Finding> Findings)> Each(Func<Inline, Inline?> inline, Func<MathPiece, MathPiece?> piece)
    {
        for (int at = 0; ; at++)
        {
            Planting planting = new(at, inline, piece);
            Document planted = planting.Of(Document);
            if (planting.Planted is not { } change) yield break;
            yield return (change.From, change.To, Findings(planted));
        }
    }
}
