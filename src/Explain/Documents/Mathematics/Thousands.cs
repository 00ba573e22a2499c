namespace Explain;

/// <summary>Separates groups of three digits in whole parts of five digits or more: 12 500, but 1250.</summary>
internal static class Thousands
{
    private const int LeastDigits = 5;

    public static string Group(string digits, string separator)
    {
        int start = digits.TakeWhile(c => !char.IsAsciiDigit(c)).Count();
        int end = start + digits.Skip(start).TakeWhile(char.IsAsciiDigit).Count();
        if (end - start < LeastDigits) return digits;
        string grouped = digits;
        for (int at = end - 3; at > start; at -= 3) grouped = grouped.Insert(at, separator);
        return grouped;
    }
}
