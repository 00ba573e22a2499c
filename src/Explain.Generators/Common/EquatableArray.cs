using System.Collections;
using System.Runtime.CompilerServices;

namespace Explain.Generators;

/// <summary>An immutable list that compares by content, so that a stage that holds one can be recognised as unchanged.</summary>
[CollectionBuilder(typeof(EquatableArrayBuilder), nameof(EquatableArrayBuilder.Create))]
internal readonly struct EquatableArray<T>(T[]? items) : IReadOnlyList<T>, IEquatable<EquatableArray<T>>
    where T : IEquatable<T>
{
    public int Count => items?.Length ?? 0;

    public T this[int index] => items![index];

    public bool Equals(EquatableArray<T> other) => Items.SequenceEqual(other.Items);

    public override bool Equals(object? obj) => obj is EquatableArray<T> other && Equals(other);

    public override int GetHashCode() => Items.Aggregate(17, (hash, item) => unchecked(hash * 31 + item.GetHashCode()));

    public IEnumerator<T> GetEnumerator() => Items.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private IEnumerable<T> Items => items ?? [];
}
