namespace Explain;

/// <summary>Problem files to begin with, one a topic.</summary>
internal static class Starters
{
    public static string Baseline { get; } = Resources.Read("starters/inaccessible-distance.yaml");

    public static string Triangle { get; } = Resources.Read("starters/solve-a-triangle.yaml");
}
