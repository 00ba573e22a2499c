using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Explain.Generators;

/// <summary>Reads C# expressions as formulas, and says of everything else what to write instead.</summary>
/// <param name="model">The meaning of names.</param>
/// <param name="findings">Where mistakes are put.</param>
/// <param name="letter">What a parameter or local stands for; null when it may not be used.</param>
internal sealed class NodeReader(SemanticModel model, List<Finding> findings, Func<ISymbol, Node?> letter)
{
    /// <summary>The formula; null where something was wrong.</summary>
    public Node? Read(ExpressionSyntax expression) => expression switch
    {
        ParenthesizedExpressionSyntax inner => Read(inner.Expression),
        CastExpressionSyntax cast when model.GetTypeInfo(cast).Type?.SpecialType == SpecialType.System_Double => Read(cast.Expression),
        LiteralExpressionSyntax literal when literal.IsKind(SyntaxKind.NumericLiteralExpression) => Literal(literal),
        PrefixUnaryExpressionSyntax unary when unary.IsKind(SyntaxKind.UnaryMinusExpression) => Read(unary.Operand) is { } of ? new NegativeNode(of) : null,
        PrefixUnaryExpressionSyntax unary when unary.IsKind(SyntaxKind.UnaryPlusExpression) => Read(unary.Operand),
        BinaryExpressionSyntax binary when Sign(binary) is { } sign => Binary(binary, sign),
        IdentifierNameSyntax name => Name(name),
        MemberAccessExpressionSyntax member => Name(member),
        InvocationExpressionSyntax call => Call(call),
        _ => NotAllowed(expression),
    };

    private Node? Literal(LiteralExpressionSyntax literal) => Number.Parse(literal.Token.Text) ?? NotAllowed(literal);

    private Node? Binary(BinaryExpressionSyntax binary, char sign)
    {
        Node? left = Read(binary.Left), right = Read(binary.Right);
        if (left is null || right is null) return null;
        if (model.GetTypeInfo(binary).Type is { SpecialType: not SpecialType.System_Double } type && (sign == '/' || type.SpecialType != SpecialType.System_Int32))
            return Fault(Descriptors.WholeDivision, binary, binary.ToString());
        return BinaryNode.Of(sign, left, right);
    }

    private Node? Name(ExpressionSyntax name)
    {
        if (model.GetSymbolInfo(name).Symbol is not { } symbol) return null;
        if (symbol is { Name: "PI", ContainingType.Name: "Math" }) return new PiNode();
        return letter(symbol) ?? NotAllowed(name);
    }

    private Node? Call(InvocationExpressionSyntax call)
    {
        if (model.GetSymbolInfo(call).Symbol is not IMethodSymbol method) return null;
        Node?[] arguments = [.. call.ArgumentList.Arguments.Select(a => Read(a.Expression))];
        if (arguments.Any(a => a is null)) return null;
        string function = method.ContainingType.ToDisplayString() + "." + method.Name;
        return FunctionList.Make(function, arguments!) ?? Fault(Descriptors.UnknownCall, call, method.ContainingType.Name + "." + method.Name, FunctionList.Text);
    }

    private static char? Sign(BinaryExpressionSyntax binary) => binary.Kind() switch
    {
        SyntaxKind.AddExpression => '+',
        SyntaxKind.SubtractExpression => '-',
        SyntaxKind.MultiplyExpression => '*',
        SyntaxKind.DivideExpression => '/',
        _ => null,
    };

    private Node? NotAllowed(ExpressionSyntax expression) => Fault(Descriptors.BadStatement, expression, expression.ToString(),
        "a formula is made of parameters, local values, numbers, + - * / and listed functions; move the rest to a plain method");

    private Node? Fault(DiagnosticDescriptor descriptor, SyntaxNode at, params string[] args)
    {
        findings.Add(Finding.Of(descriptor, Place.Of(at), args));
        return null;
    }
}
