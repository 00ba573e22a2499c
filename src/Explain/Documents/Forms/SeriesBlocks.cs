namespace Explain;

/// <summary>Steps of one kind as a table: a row each, the value of each cell in its column.</summary>
internal sealed class SeriesBlocks(Page page, CalculationLines lines)
{
    public StepBlock Of(Series series)
    {
        PassageBlocks blocks = new(page);
        TableBlock table = new([[], .. series.Columns.Select(c => Sentence.Capital(page.Speaker.Say(c)))],
            [.. series.Rows.Select(r => (Items<Items<Inline>>)[Sentence.Capital(page.Speaker.Say(r.Label)), .. r.Cells.Select(Cell)])]);
        return blocks.Block(series, blocks.Reason(series), [.. Example(series), table]);
    }

    private IEnumerable<Block> Example(Series series) => series.Example is not { } row ? []
        : series.Rows[row].Cells.OfType<Calculation>().Select(c => new DisplayBlock([lines.Chain(c)]));

    private Items<Inline> Cell(Step cell) => cell is Calculation c ? [new MathRun(lines.Value(c))] : page.Speaker.Say(cell.Says);
}
