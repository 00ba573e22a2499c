namespace Explain.Generators;

/// <summary>Writes a formula as the C# that builds its tree.</summary>
internal static class NodeEmitter
{
    public static string Emit(Node node) => node switch
    {
        NumberNode n => Quantity(n.Denominator == 1 ? Number.Plain(n.Numerator)
            : $"new global::Fractions.Fraction({Number.Plain(n.Numerator)}, {Number.Plain(n.Denominator)})", n.Of.Emit()),
        PiNode => New("Quantity", "global::Explain.Exact.Pi", UnitModel.None.Emit()),
        LetterNode l => New("SymbolUse", $"new global::Explain.Letter({Identifier.Literal(l.Name)})"),
        BinaryNode b => New(Kind(b.Sign), Emit(b.Left), Emit(b.Right)),
        NegativeNode n => New("Negative", Emit(n.Of)),
        PowerNode p => New("Power", Emit(p.Base), Number.Plain(p.Exponent)),
        RootNode r => New("Root", Emit(r.Of)),
        ApplyNode a => New("Apply", "global::Explain.Function." + a.Function, Emit(a.To)),
        _ => throw new ArgumentException(node.GetType().Name, nameof(node)),
    };

    private static string Quantity(string amount, string unit) => New("Quantity", $"global::Explain.Exact.Of({amount})", unit);

    private static string New(string type, params string[] arguments) => $"new global::Explain.{type}({string.Join(", ", arguments)})";

    private static string Kind(char sign) => sign switch { '+' => "Sum", '-' => "Difference", '*' => "Product", _ => "Quotient" };
}
