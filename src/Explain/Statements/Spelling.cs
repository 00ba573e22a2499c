namespace Explain;

/// <summary>Finds what somebody may have meant.</summary>
internal static class Spelling
{
    private const int LongestCompared = 40;

    /// <summary>The nearest word; null when none is near.</summary>
    public static string? Nearest(string typed, IEnumerable<string> words)
    {
        string? nearest = words.MinBy(w => Distance(typed, w));
        return nearest is not null && Distance(typed, nearest) <= int.Max(1, nearest.Length / 3) ? nearest : null;
    }

    /// <summary>How many letters must be put in, left out, exchanged, or swapped with a neighbour.</summary>
    public static int Distance(string from, string to)
    {
        if (from.Length > LongestCompared || to.Length > LongestCompared) return int.Max(from.Length, to.Length);
        int width = to.Length + 1;
        Span<int> cost = stackalloc int[(from.Length + 1) * width];
        for (int i = 0; i <= from.Length; i++)
        {
            for (int j = 0; j <= to.Length; j++)
            {
                if (i == 0 || j == 0) { cost[i * width + j] = i + j; continue; }
                int exchanged = cost[(i - 1) * width + j - 1] + (from[i - 1] == to[j - 1] ? 0 : 1);
                cost[i * width + j] = int.Min(exchanged, int.Min(cost[(i - 1) * width + j], cost[i * width + j - 1]) + 1);
                bool swapped = i > 1 && j > 1 && from[i - 1] == to[j - 2] && from[i - 2] == to[j - 1];
                if (swapped) cost[i * width + j] = int.Min(cost[i * width + j], cost[(i - 2) * width + j - 2] + 1);
            }
        }

        return cost[from.Length * width + to.Length];
    }
}
