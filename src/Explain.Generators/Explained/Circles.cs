namespace Explain.Generators;

/// <summary>Finds explained methods that call each other in a circle.</summary>
internal static class Circles
{
    public static IEnumerable<Finding> Find(IEnumerable<Reading<ExplainedModel>> readings)
    {
        Reading<ExplainedModel>[] all = [.. readings.Where(r => r.Model is not null)];
        Dictionary<string, ExplainedModel> byName = all.GroupBy(r => r.Model!.FullName).ToDictionary(g => g.Key, g => g.First().Model!);
        HashSet<string> told = [];
        foreach (Reading<ExplainedModel> reading in all)
        {
            if (Back(reading.Model!, reading.Model!, byName, []) is not { } circle || !circle.All(m => told.Add(m.FullName))) continue;
            yield return Finding.Of(Descriptors.Circle, reading.At, string.Join(" → ", circle.Select(m => m.Method).Append(reading.Model!.Method)));
        }
    }

    /// <summary>The way from a formula back to where it began, if there is one.</summary>
    private static List<ExplainedModel>? Back(ExplainedModel at, ExplainedModel start, Dictionary<string, ExplainedModel> byName, HashSet<string> seen)
    {
        if (!seen.Add(at.FullName)) return null;
        foreach (string called in at.Calls)
        {
            if (called == start.FullName) return [at];
            if (byName.TryGetValue(called, out ExplainedModel? next) && Back(next, start, byName, seen) is { } rest) return [at, .. rest];
        }

        return null;
    }
}
