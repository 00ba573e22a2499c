namespace Explain.Generators;

/// <summary>
/// In a law, x * x becomes a square: it prints as one, and only as one can it be rearranged for x. An explained method keeps
/// its product, which is calculated as its plain method calculates it.
/// </summary>
internal static class Squares
{
    public static Node In(Node node) => node switch
    {
        BinaryNode { Sign: '*' } b when b.Left == b.Right => new PowerNode(In(b.Left), 2),
        BinaryNode b => b with { Left = In(b.Left), Right = In(b.Right) },
        NegativeNode n => n with { Of = In(n.Of) },
        PowerNode p => p with { Base = In(p.Base) },
        RootNode r => r with { Of = In(r.Of) },
        ApplyNode a => a with { To = In(a.To) },
        _ => node,
    };
}
