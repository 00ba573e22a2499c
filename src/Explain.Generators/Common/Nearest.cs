namespace Explain.Generators;

/// <summary>Finds what somebody may have meant.</summary>
internal static class Nearest
{
    /// <summary>A sentence that offers the nearest name, or nothing when none is near.</summary>
    public static string Offer(string name, IEnumerable<string> known)
    {
        string? best = known.OrderBy(k => Distance(name, k)).ThenBy(k => k, StringComparer.Ordinal).FirstOrDefault();
        return best is not null && Distance(name, best) <= Math.Min(Math.Max(2, name.Length / 3), name.Length - 1) ? "; did you mean " + best + "?" : "";
    }

    /// <summary>How many letters must be put in, left out or exchanged.</summary>
    private static int Distance(string from, string to)
    {
        int[] row = [.. Enumerable.Range(0, to.Length + 1)];
        for (int i = 1; i <= from.Length; i++)
        {
            int corner = row[0];
            row[0] = i;
            for (int j = 1; j <= to.Length; j++)
            {
                int exchanged = corner + (from[i - 1] == to[j - 1] ? 0 : 1);
                corner = row[j];
                row[j] = Math.Min(exchanged, Math.Min(row[j], row[j - 1]) + 1);
            }
        }

        return row[to.Length];
    }
}
