using System.Globalization;

namespace Explain;

/// <summary>Shares the width of a line among the columns of a table: each gets what cannot be broken in it, and the rest goes to the longer ones.</summary>
internal static class ColumnWidths
{
    /// <summary>Average characters in a line of the narrowest column of text provided for, gaps between columns taken off.</summary>
    private const double Line = 50;

    /// <summary>No column asks for more than this.</summary>
    private const double Most = 30;

    /// <summary>The share of each column, in thousandths.</summary>
    public static IEnumerable<string> Of(TableBlock table)
    {
        double[] needs = Widths(table, Unbreakable), wants = [.. Widths(table, Whole).Zip(needs, (w, n) => double.Max(n, double.Min(w, Most)))];
        double spare = double.Max(0, Line - needs.Sum()), wanted = wants.Sum() - needs.Sum();
        double[] widths = [.. needs.Zip(wants, (n, w) => n + (wanted > spare ? spare * (w - n) / wanted : w - n))];
        return widths.Select(w => ((int)(999 * w / double.Max(widths.Sum(), 1))).ToString(CultureInfo.InvariantCulture));
    }

    private static double[] Widths(TableBlock table, Func<Items<Inline>, double> width) =>
        [.. Enumerable.Range(0, table.Headings.Count).Select(i => 2 + table.Rows.Select(r => r[i]).Append(table.Headings[i]).Max(width))];

    private static double Whole(Items<Inline> cell) => cell.Sum(r => Width(r, t => t.Length));

    private static double Unbreakable(Items<Inline> cell) => cell.Count == 0 ? 0 : cell.Max(r => Width(r, t => t.Split(' ').Max(w => w.Length)));

    private static double Width(Inline run, Func<string, int> text) => run switch
    {
        WordRun w => text(w.Text),
        StepRun s => text(s.Number),
        CountRun c => text(c.Text),
        UserRun u => text(u.Text),
        MathRun m => MathWidth.Of(m.Is),
        Strong s => s.Runs.Sum(r => Width(r, text)),
        Emphasis e => e.Runs.Sum(r => Width(r, text)),
        _ => 0,
    };
}
