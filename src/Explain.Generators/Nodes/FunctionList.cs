namespace Explain.Generators;

/// <summary>The functions that a formula may call, in one list.</summary>
internal static class FunctionList
{
    public const string Text = "Math.Sqrt, Math.Pow with a whole exponent from 2 to 100, and Sin, Cos, Tan, Asin, Acos, Atan of DegreeTrigonometry";

    private const string Degrees = "Explain.DegreeTrigonometry.";

    /// <summary>The formula of a call; null where the function is not listed.</summary>
    public static Node? Make(string function, Node[] arguments) => (function, arguments) switch
    {
        ("System.Math.Sqrt", [var of]) => new RootNode(of),
        ("System.Math.Pow", [var of, NumberNode { Denominator: 1, Numerator: >= 2 and <= 100 } exponent]) => new PowerNode(of, (int)exponent.Numerator),
        (Degrees + "Sin", [var of]) => new ApplyNode("Sine", of),
        (Degrees + "Cos", [var of]) => new ApplyNode("Cosine", of),
        (Degrees + "Tan", [var of]) => new ApplyNode("Tangent", of),
        (Degrees + "Asin", [var of]) => new ApplyNode("ArcSine", of),
        (Degrees + "Acos", [var of]) => new ApplyNode("ArcCosine", of),
        (Degrees + "Atan", [var of]) => new ApplyNode("ArcTangent", of),
        _ => null,
    };

    /// <summary>Whether a function of Math measures angles in radians.</summary>
    public static bool IsInRadians(string function) =>
        function is "System.Math.Sin" or "System.Math.Cos" or "System.Math.Tan" or "System.Math.Asin" or "System.Math.Acos" or "System.Math.Atan";
}
