namespace Explain;

/// <summary>Reads the quantities that a rule speaks of; sin ABC is the sine of an angle, found as a quantity of its own.</summary>
internal static class QuantityPattern
{
    public static Symbol? Read(string pattern) => pattern.Split(' ') switch
    {
        ["sin", var angle] => Ratio(Function.Sine, angle),
        ["cos", var angle] => Ratio(Function.Cosine, angle),
        ["tan", var angle] => Ratio(Function.Tangent, angle),
        _ => QuantityGrammar.Read(pattern),
    };

    private static Ratio? Ratio(Function function, string angle) =>
        ObjectPattern.Read(angle) is Polygon { Corners: [var first, var vertex, var second] } ? new Ratio(function, new Angle(first, vertex, second)) : null;
}
