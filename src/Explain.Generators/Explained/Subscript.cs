namespace Explain.Generators;

/// <summary>Numbers below the line, which tell symbols apart.</summary>
internal static class Subscript
{
    public static string Of(int number) => string.Concat(Number.Plain(number).Select(digit => (char)(digit - '0' + '₀')));
}
