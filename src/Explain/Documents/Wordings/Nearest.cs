namespace Explain;

/// <summary>Finds what was probably meant.</summary>
internal static class Nearest
{
    private const int MostEdits = 3;

    /// <summary>The nearest of the names, by edits; null where none is near.</summary>
    public static string? To(string typed, IEnumerable<string> names) => names
        .Select(n => (Name: n, Edits: Edits(typed, n))).Where(n => n.Edits <= MostEdits)
        .OrderBy(n => n.Edits).ThenBy(n => n.Name, StringComparer.Ordinal).Select(n => n.Name).FirstOrDefault();

    private static int Edits(string from, string to)
    {
        int[] row = [.. Enumerable.Range(0, to.Length + 1)];
        for (int i = 1; i <= from.Length; i++)
        {
            int corner = row[0];
            row[0] = i;
            for (int j = 1; j <= to.Length; j++)
                (corner, row[j]) = (row[j], int.Min(int.Min(row[j], row[j - 1]) + 1, corner + (from[i - 1] == to[j - 1] ? 0 : 1)));
        }

        return row[to.Length];
    }
}
