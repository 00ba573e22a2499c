namespace Explain;

/// <summary>The kinds of problem that a file may name: one that is not solved is told apart from one that does not exist.</summary>
internal static class KnownTopics
{
    public static Items<KnownTopic> All { get; } =
    [
        Of("construct a triangle"), Of("similar triangles"), Of("inaccessible distance"), Of("solve a triangle"),
        Of("equal shares", FigureFaults.NoInscribedCircle), Of("tether", FigureFaults.OfTether), Of("angle chase"),
    ];

    /// <summary>The kind of a name; null when there is none.</summary>
    public static KnownTopic? Find(TopicId id) => All.FirstOrDefault(k => k.Id == id);

    private static KnownTopic Of(string name, Func<Problem, ProblemError?>? fault = null) => new(new(name), fault ?? (_ => null));
}
