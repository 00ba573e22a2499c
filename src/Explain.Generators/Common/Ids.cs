namespace Explain.Generators;

/// <summary>The form of an id in a declaration.</summary>
internal static class Ids
{
    public const string Form = "an id is made of lower-case letters, digits, hyphens and full stops, and begins with a letter";

    public static bool IsId(string id) => id.Length > 0 && id[0] is >= 'a' and <= 'z' && id.All(c => c is (>= 'a' and <= 'z') or (>= '0' and <= '9') or '-' or '.');
}
