namespace Explain.Generators;

/// <summary>Shows how a unit comes about: the formula with units in place of its symbols.</summary>
internal static class UnitText
{
    public static string Of(Node node) => node switch
    {
        BinaryNode b => Part(b.Left) + " " + Sign(b.Sign) + " " + Part(b.Right),
        NegativeNode n => "−" + Part(n.Of),
        PowerNode p => "(" + Of(p.Base) + ")^" + Number.Plain(p.Exponent),
        RootNode r => "√(" + Of(r.Of) + ")",
        ApplyNode a => a.Function.ToLowerInvariant() + "(" + Of(a.To) + ")",
        PiNode => "π",
        NumberNode n => (n.Denominator == 1 ? Number.Plain(n.Numerator) : Number.Plain(n.Numerator) + "/" + Number.Plain(n.Denominator)) + n.Of.Suffix,
        _ => node.Unit is { IsNone: false } unit ? unit.ToString() : "1",
    };

    private static string Part(Node node) => node is BinaryNode { Sign: '+' or '-' } ? "(" + Of(node) + ")" : Of(node);

    private static char Sign(char sign) => sign switch { '*' => '×', '/' => '÷', '-' => '−', _ => sign };
}
