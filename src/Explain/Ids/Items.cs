using System.Collections;
using System.Runtime.CompilerServices;

namespace Explain;

/// <summary>An immutable list that is equal to another when the items are, in order. The default value is the empty list.</summary>
/// <typeparam name="T">The kind of item.</typeparam>
[CollectionBuilder(typeof(ItemsFactory), nameof(ItemsFactory.Create))]
public readonly struct Items<T> : IReadOnlyList<T>, IEquatable<Items<T>>
{
    private readonly T[]? items;

    internal Items(T[] items) => this.items = items;

    /// <summary>How many items there are.</summary>
    public int Count => items?.Length ?? 0;

    /// <summary>The item at a place, counted from 0.</summary>
    public T this[int index] => items is null ? throw new ArgumentOutOfRangeException(nameof(index)) : items[index];

    /// <summary>Whether both lists hold equal items in the same order.</summary>
    public static bool operator ==(Items<T> left, Items<T> right) => left.Equals(right);

    /// <summary>Whether the lists differ in an item or in length.</summary>
    public static bool operator !=(Items<T> left, Items<T> right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(Items<T> other) => AsSpan().SequenceEqual(other.AsSpan(), EqualityComparer<T>.Default);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Items<T> other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        HashCode hash = default;
        foreach (T item in AsSpan()) hash.Add(item);
        return hash.ToHashCode();
    }

    /// <summary>The items as a span, without a copy.</summary>
    public ReadOnlySpan<T> AsSpan() => items;

    /// <summary>The list with one more item at its end.</summary>
    public Items<T> With(T item) => [.. this, item];

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)(items ?? [])).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
