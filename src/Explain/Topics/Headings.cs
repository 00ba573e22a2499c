namespace Explain;

/// <summary>Headings of parts that ask for distances.</summary>
internal static class Headings
{
    /// <summary>What a part is about; null where the list of its goals says it best.</summary>
    public static Phrase? Of(Items<Goal> goals)
    {
        if (goals.Any(g => g.Kind != GoalKind.Value)) return null;
        if (goals.All(g => g.Wanted is Length)) return TopicPhrases.Distances([.. goals.Select(g => g.Wanted!)]);
        return goals is [{ Wanted: DistanceToLine distance }] ? TopicPhrases.DistanceTo(distance.From, distance.To) : null;
    }
}
