using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Explain.Generators;

/// <summary>Reads C# expressions as formulas, and says of everything else what to write instead.</summary>
/// <param name="model">The meaning of names.</param>
/// <param name="findings">Where mistakes are put.</param>
/// <param name="letter">What a parameter or local stands for; null when it may not be used.</param>
/// <param name="call">The formula of a call of an explained method; null where none may be called.</param>
internal sealed class NodeReader(SemanticModel model, List<Finding> findings, Func<ISymbol, Node?> letter, Func<IMethodSymbol, Node[], InvocationExpressionSyntax, Node?>? call = null)
{
    /// <summary>The units that locals of plain numbers must have, because of where they are used.</summary>
    public Dictionary<string, UnitModel> Wishes { get; init; } = [];

    /// <summary>The formula; null where something was wrong.</summary>
    public Node? Read(ExpressionSyntax expression) => expression switch
    {
        ParenthesizedExpressionSyntax inner => Read(inner.Expression),
        CastExpressionSyntax cast when model.GetTypeInfo(cast).Type?.SpecialType == SpecialType.System_Double => Read(cast.Expression),
        LiteralExpressionSyntax literal when literal.IsKind(SyntaxKind.NumericLiteralExpression) => Number.Parse(literal.Token.Text) ?? NotAllowed(literal),
        PrefixUnaryExpressionSyntax unary when unary.IsKind(SyntaxKind.UnaryMinusExpression) => Read(unary.Operand) is { } of ? new NegativeNode(of) : null,
        PrefixUnaryExpressionSyntax unary when unary.IsKind(SyntaxKind.UnaryPlusExpression) => Read(unary.Operand),
        BinaryExpressionSyntax binary when Sign(binary) is { } sign => Binary(binary, sign),
        IdentifierNameSyntax or MemberAccessExpressionSyntax => Name(expression),
        InvocationExpressionSyntax invocation => Call(invocation),
        _ => NotAllowed(expression),
    };

    /// <summary>Two formulas that are compared.</summary>
    public (Node Left, Node Right)? ReadPair(ExpressionSyntax left, ExpressionSyntax right, SyntaxNode at)
    {
        if (Read(left) is not { } l || Read(right) is not { } r) return null;
        (l, r) = Node.Alike(l, r);
        if (l.Unit is not { } one || r.Unit is not { } other || one == other) return (l, r);
        if (!WishAngles(l, r)) Fault(Descriptors.KindsApart, at, at.ToString(), UnitChecks.Apart(one, other));
        return null;
    }

    /// <summary>Whether a local of plain numbers is now wished to be an angle, because it stands where an angle must.</summary>
    public bool WishAngles(params Node[] nodes) => nodes.Where(n => n.Unit is { IsNone: true })
        .SelectMany(n => n.Letters).Where(l => l.Of is { IsNone: true }).ToList().Select(l => Wish(l.Name, UnitModel.Degree)).ToList().Contains(true);

    /// <summary>Whether a wish is new; the method is then read again.</summary>
    public bool Wish(string local, UnitModel unit)
    {
        if (Wishes.ContainsKey(local)) return false;
        Wishes.Add(local, unit);
        return true;
    }

    private Node? Binary(BinaryExpressionSyntax binary, char sign)
    {
        Node? left = Read(binary.Left), right = Read(binary.Right);
        if (left is null || right is null) return null;
        if (model.GetTypeInfo(binary).Type is { SpecialType: not SpecialType.System_Double } type && (sign == '/' || type.SpecialType != SpecialType.System_Int32))
            return Fault(Descriptors.WholeDivision, binary, binary.ToString());
        BinaryNode node = BinaryNode.Of(sign, left, right);
        bool besideAngle = sign is '+' or '-' && (left.IsAngle || right.IsAngle);
        return Checked(node, binary, besideAngle ? [node.Left, node.Right] : []);
    }

    private Node? Name(ExpressionSyntax name)
    {
        if (model.GetSymbolInfo(name).Symbol is not { } symbol) return null;
        return symbol is { Name: "PI", ContainingType.Name: "Math" } ? new PiNode() : letter(symbol) ?? NotAllowed(name);
    }

    private Node? Call(InvocationExpressionSyntax invocation)
    {
        if (model.GetSymbolInfo(invocation).Symbol is not IMethodSymbol method) return null;
        if (invocation.ArgumentList.Arguments.Any(a => a.NameColon is not null))
            return Fault(Descriptors.BadStatement, invocation, invocation.ToString(), "write the arguments in the order of the parameters, without names");
        Node?[] arguments = [.. invocation.ArgumentList.Arguments.Select(a => Read(a.Expression))];
        if (arguments.Any(a => a is null)) return null;
        string function = method.ContainingType.ToDisplayString() + "." + method.Name, shortly = method.ContainingType.Name + "." + method.Name;
        if (FunctionList.IsInRadians(function)) return Fault(Descriptors.Radians, invocation, shortly, method.Name);
        if (call is not null && IsExplained(method)) return call(method, arguments!, invocation);
        if (FunctionList.Make(function, arguments!) is not { } made)
            return Fault(Descriptors.UnknownCall, invocation, shortly, FunctionList.Text + (call is null ? "" : ", or mark a method of your own [Explained]"));
        if (made is PowerNode { Exponent: 2 })
            Fault(Descriptors.Square, invocation, invocation.ToString(), Factor(invocation.ArgumentList.Arguments[0].Expression));
        if (made is ApplyNode apply) made = apply with { To = Node.Fit(apply.To, apply.Takes) };
        return Checked(made, invocation, made is ApplyNode { IsInverse: false } sine ? [sine.To] : []);
    }

    public static bool IsExplained(IMethodSymbol method) => method.GetAttributes().Any(a => a.AttributeClass?.ToDisplayString() == "Explain.ExplainedAttribute");

    /// <summary>The formula if its units go together; some of its parts may be wished to be angles.</summary>
    private Node? Checked(Node node, SyntaxNode at, Node[] wished)
    {
        if (UnitChecks.Fault(node) is not { } fault) return node;
        return WishAngles(wished) ? null : Fault(Descriptors.KindsApart, at, at.ToString(), fault);
    }

    private static string Factor(ExpressionSyntax expression) =>
        expression is IdentifierNameSyntax or ParenthesizedExpressionSyntax or LiteralExpressionSyntax or InvocationExpressionSyntax ? expression.ToString() : "(" + expression + ")";

    private static char? Sign(BinaryExpressionSyntax binary) => binary.Kind() switch
    {
        SyntaxKind.AddExpression => '+',
        SyntaxKind.SubtractExpression => '-',
        SyntaxKind.MultiplyExpression => '*',
        SyntaxKind.DivideExpression => '/',
        _ => null,
    };

    private Node? NotAllowed(ExpressionSyntax expression) => Fault(Descriptors.BadStatement, expression, expression.ToString(),
        "a formula is made of parameters, local values, numbers, + - * / and listed functions; move the rest to where the method is called");

    private Node? Fault(DiagnosticDescriptor descriptor, SyntaxNode at, params string[] args)
    {
        findings.Add(Finding.Of(descriptor, Place.Of(at), args));
        return null;
    }
}
