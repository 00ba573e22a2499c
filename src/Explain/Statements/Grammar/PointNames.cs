namespace Explain;

/// <summary>Takes names that stand together apart: ABC, A…K, B₁C′.</summary>
internal static class PointNames
{
    /// <summary>The points of a name token, each once; null when one comes twice or the letters of A…K do not run on.</summary>
    public static Items<Point>? Distinct(string names)
    {
        List<string> all = [];
        for (int i = 0; i < names.Length;)
        {
            bool toHere = names[i] == '…';
            int start = toHere ? ++i : i;
            for (i++; i < names.Length && !char.IsAsciiLetterUpper(names[i]) && names[i] != '…'; i++) { }
            string name = names[start..i];
            if (toHere && !RunOn(all, name)) return null;
            all.Add(name);
        }

        return all.Distinct(StringComparer.Ordinal).Count() == all.Count ? [.. all.Select(n => new Point(n))] : null;
    }

    /// <summary>The name in one spelling: a prime for an apostrophe, small digits for digits.</summary>
    public static char Normal(char sign) => sign switch
    {
        '\'' or '’' or '′' => '′',
        >= '0' and <= '9' => (char)('₀' + (sign - '0')),
        _ => sign,
    };

    private static bool RunOn(List<string> all, string last)
    {
        if (all.Count == 0 || all[^1].Length != 1 || last.Length != 1 || all[^1][0] >= last[0]) return false;
        for (char letter = (char)(all[^1][0] + 1); letter < last[0]; letter++) all.Add(letter.ToString());
        return true;
    }
}
