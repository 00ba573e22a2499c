using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Explain.Generators;

/// <summary>Reads the method of a relation: its pair of expressions and the quantities of its parameters.</summary>
internal static class LawReader
{
    public static Law? Read(IMethodSymbol method, MethodDeclarationSyntax syntax, SemanticModel model, string id, List<Finding> findings)
    {
        int before = findings.Count;
        Place at = Place.Of(syntax.Identifier);
        if (!Has(method.GetAttributes(), "RelationAttribute")) findings.Add(Finding.Of(Descriptors.NoMeaning, at, id, "mark the method [Relation] as well"));
        if (!method.IsStatic || method.IsGenericMethod || !ReturnsPair(method))
            findings.Add(Finding.Of(Descriptors.BadSignature, at, method.Name, "a relation is a static method of doubles that returns (double, double)"));
        RoleModel[] quantities = [.. method.Parameters.Select(p => Quantity(p, id, findings)).OfType<RoleModel>()];
        if (findings.Count > before) return null;
        if (Returned(syntax) is not TupleExpressionSyntax { Arguments: [var left, var right] })
        {
            findings.Add(Finding.Of(Descriptors.BadStatement, at, method.Name, "a relation returns one pair of expressions and does nothing else"));
            return null;
        }

        NodeReader reader = new(model, findings, p => p is IParameterSymbol ? new LetterNode(p.Name, Unit(quantities.First(q => q.Name == p.Name).Pattern)) : null);
        return reader.ReadPair(left.Expression, right.Expression, (SyntaxNode?)syntax.ExpressionBody ?? syntax) is { } sides ? new(sides.Left, sides.Right, [.. quantities]) : null;
    }

    /// <summary>The unit of a quantity, known only for an angle, as in <c>angle ABC</c>, <c>reflex angle ABC</c> or a bearing.</summary>
    private static UnitModel? Unit(string pattern) => pattern.Split(' ').Any(word => word is "angle" or "bearing") ? UnitModel.Degree : null;

    private static bool ReturnsPair(IMethodSymbol method) => method.ReturnType is INamedTypeSymbol { IsTupleType: true } tuple &&
        tuple.TupleElements.Length == 2 && tuple.TupleElements.All(e => e.Type.SpecialType == SpecialType.System_Double);

    private static ExpressionSyntax? Returned(MethodDeclarationSyntax syntax) => syntax.ExpressionBody?.Expression
        ?? (syntax.Body is { Statements: [ReturnStatementSyntax only] } ? only.Expression : null);

    private static RoleModel? Quantity(IParameterSymbol parameter, string id, List<Finding> findings)
    {
        AttributeData? quantity = parameter.GetAttributes().FirstOrDefault(a => a.AttributeClass?.ToDisplayString() == "Explain.QuantityAttribute");
        Place at = Place.Of(parameter.Locations[0]);
        if (parameter.Type.SpecialType != SpecialType.System_Double || parameter.RefKind != RefKind.None)
            findings.Add(Finding.Of(Descriptors.BadSignature, at, parameter.ContainingSymbol.Name, $"the parameter {parameter.Name} of a relation must be a double"));
        else if (quantity is not { ConstructorArguments: [{ Value: string pattern }] })
            findings.Add(Finding.Of(Descriptors.NoMeaning, at, id, $"say with [Quantity(\"…\")] what {parameter.Name} stands for"));
        else return new(parameter.Name, pattern, IsCondition: false);
        return null;
    }

    private static bool Has(IEnumerable<AttributeData> attributes, string name) =>
        attributes.Any(a => a.AttributeClass?.ToDisplayString() == "Explain." + name);
}
