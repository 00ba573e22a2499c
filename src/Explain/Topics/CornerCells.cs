namespace Explain;

/// <summary>One row of the table of bounds: each measurement at the bound that its direction names, then the quantity.</summary>
internal sealed class CornerCells(Ledger inside, Items<Premise> premises, RuleUse why)
{
    public Items<Step> Cells(Symbol quantity, Expr formula, Items<Trend> trends, bool greatest)
    {
        List<Step> cells = [];
        foreach (Trend trend in trends)
        {
            Premise premise = premises.First(p => p.Id == inside.ClaimOf(trend.With));
            bool up = greatest == (trend.Direction == Direction.Rises);
            Expr measured = new ValueOf(premise.Id);
            cells.Add(Cell(inside.Arrangement.Canonical(trend.With), up ? measured + premise.Within! : measured - premise.Within!));
        }

        cells.Add(Cell(quantity, formula));
        return [.. cells];
    }

    private Calculation Cell(Symbol target, Expr formula)
    {
        Calculation cell = Calculate.By(inside, target, formula, why);
        inside.Learn(cell);
        return cell;
    }
}
