namespace Explain;

/// <summary>Words and letters of formulas.</summary>
internal static class Words
{
    /// <summary>The function of a word; null when it is none.</summary>
    public static Function? Function(string word) => word switch
    {
        "sin" => Explain.Function.Sine,
        "cos" => Explain.Function.Cosine,
        "tan" => Explain.Function.Tangent,
        "arcsin" => Explain.Function.ArcSine,
        "arccos" => Explain.Function.ArcCosine,
        "arctan" => Explain.Function.ArcTangent,
        _ => null,
    };

    public static string Of(Function function) => function switch
    {
        Explain.Function.Sine => "sin",
        Explain.Function.Cosine => "cos",
        Explain.Function.Tangent => "tan",
        Explain.Function.ArcSine => "sin⁻¹",
        Explain.Function.ArcCosine => "cos⁻¹",
        _ => "tan⁻¹",
    };

    public static Function? Inverse(Function function) => function switch
    {
        Explain.Function.Sine => Explain.Function.ArcSine,
        Explain.Function.Cosine => Explain.Function.ArcCosine,
        Explain.Function.Tangent => Explain.Function.ArcTangent,
        _ => null,
    };

    /// <summary>Whether a token is an unknown: one small letter, Latin or Greek.</summary>
    public static bool IsLetter(TextToken token) => token is { Kind: TokenKind.Word, Text.Length: 1 };
}
