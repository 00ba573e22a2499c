namespace Explain;

/// <summary>The root of a surd sum, as far as it is known: a surd sum, proved to be none, or not decided.</summary>
internal readonly record struct Denested(SurdSum? Sum, bool IsDecided)
{
    public static Denested Nested { get; } = new(null, true);

    public static Denested Unknown { get; } = new(null, false);

    public static Denested Is(SurdSum sum) => new(sum, true);
}
