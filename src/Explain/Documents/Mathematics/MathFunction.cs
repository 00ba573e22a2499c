namespace Explain;

/// <summary>A function of a piece: sin PQT, sin⁻¹ 0.5.</summary>
internal sealed record MathFunction(Function Function, MathPiece Of) : MathPiece
{
    /// <summary>The name of the function, or of the one that it undoes.</summary>
    public string Name => Function switch
    {
        Function.Sine or Function.ArcSine => "sin",
        Function.Cosine or Function.ArcCosine => "cos",
        _ => "tan",
    };

    public bool IsInverse => Function is Function.ArcSine or Function.ArcCosine or Function.ArcTangent;
}
