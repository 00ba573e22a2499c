namespace Explain.Generators;

/// <summary>The declarations of one type, which become one generated file.</summary>
internal sealed record Group<T>(TypeModel In, EquatableArray<T> Models)
    where T : class, IEquatable<T>
{
    public static IEnumerable<Group<T>> By(IEnumerable<T> models, Func<T, TypeModel> type) =>
        models.GroupBy(type).Select(g => new Group<T>(g.Key, [.. g]));
}
