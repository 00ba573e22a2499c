namespace Explain;

/// <summary>Reads what is to be found.</summary>
internal static class GoalReader
{
    public static Goal? Read(string text)
    {
        if (After(text, "bounds of ") is { } bounded) return QuantityGrammar.Read(bounded) is { } of ? new(text, of, GoalKind.Bounds) : null;
        if (After(text, "angles of ") is { } angles) return Shape(angles) is { } shape ? new(text, null, GoalKind.Angles) { Shape = shape } : null;
        if (After(text, "sides of ") is { } sides) return Shape(sides) is { } shape ? new(text, null, GoalKind.Sides) { Shape = shape } : null;
        if (text.StartsWith("number of triangles", StringComparison.Ordinal)) return new(text, null, GoalKind.Count);
        return QuantityGrammar.Read(text) is { } quantity ? new(text, quantity, GoalKind.Value) : null;
    }

    private static string? After(string text, string words) => text.StartsWith(words, StringComparison.Ordinal) ? text[words.Length..] : null;

    private static Polygon? Shape(string text) => ObjectPattern.Read(text.Replace("triangle ", "", StringComparison.Ordinal)) as Polygon;
}
