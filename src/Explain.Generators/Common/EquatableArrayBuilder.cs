namespace Explain.Generators;

/// <summary>Builds lists that compare by content.</summary>
internal static class EquatableArrayBuilder
{
    public static EquatableArray<T> Create<T>(ReadOnlySpan<T> items)
        where T : IEquatable<T> => new(items.ToArray());
}
