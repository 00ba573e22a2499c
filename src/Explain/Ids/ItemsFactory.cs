namespace Explain;

/// <summary>Makes lists of items.</summary>
public static class ItemsFactory
{
    /// <summary>A list of the items given, copied.</summary>
    public static Items<T> Create<T>(ReadOnlySpan<T> items) => new(items.ToArray());

    /// <summary>A list of the items given, copied.</summary>
    public static Items<T> From<T>(IEnumerable<T> items) => new([.. items]);
}
