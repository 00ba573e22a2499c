namespace Explain;

/// <summary>What the rules count.</summary>
internal static partial class RulePhrases
{
    [Phrase("count.triangles")]
    public static partial Phrase Triangles(int n);
}
