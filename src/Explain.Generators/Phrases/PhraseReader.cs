using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Explain.Generators;

/// <summary>Reads the declaration of a phrase.</summary>
internal static class PhraseReader
{
    public static Reading<PhraseModel> Read(GeneratorAttributeSyntaxContext context, CancellationToken cancel)
    {
        MethodDeclarationSyntax syntax = (MethodDeclarationSyntax)context.TargetNode;
        IMethodSymbol method = (IMethodSymbol)context.TargetSymbol;
        string id = context.Attributes[0].ConstructorArguments[0].Value as string ?? "";
        Place at = Place.Of(syntax.Identifier);
        if (Fault(method, syntax, id, at) is { } fault) return new(null, at, [fault]);
        List<Finding> findings = [];
        List<PhraseParameter> parameters = [];
        foreach (IParameterSymbol parameter in method.Parameters)
        {
            cancel.ThrowIfCancellationRequested();
            if (Parameter(parameter) is { } read) parameters.Add(read);
            else findings.Add(Finding.Of(Descriptors.Unprintable, Place.Of(parameter.Locations[0]), id, parameter.Name, parameter.Type.ToDisplayString()));
        }

        string modifiers = SyntaxFacts.GetText(method.DeclaredAccessibility) + " static partial";
        if (!syntax.Modifiers.Any(m => SyntaxFacts.IsAccessibilityModifier(m.Kind()))) modifiers = "static partial";
        return findings.Count > 0 ? new(null, at, [.. findings])
            : new(new(TypeModel.Of(method.ContainingType), id, modifiers, method.Name, [.. parameters]), at, []);
    }

    private static Finding? Fault(IMethodSymbol method, MethodDeclarationSyntax syntax, string id, Place at) =>
        TypeModel.NotPartial(method.ContainingType) is { } type ? Finding.Of(Descriptors.NotPartial, at, type.Name, method.Name)
        : !Ids.IsId(id) ? Finding.Of(Descriptors.BadDeclaration, at, "phrase", id, Ids.Form)
        : !method.IsStatic || method.IsGenericMethod || !syntax.Modifiers.Any(SyntaxKind.PartialKeyword) || method.ReturnType.ToDisplayString() != "Explain.Phrase"
            ? Finding.Of(Descriptors.BadDeclaration, at, "phrase", id, "declare it as a static partial method without a body that returns Phrase")
        : null;

    private static PhraseParameter? Parameter(IParameterSymbol parameter)
    {
        string type = parameter.Type.ToDisplayString(SymbolDisplayFormat.FullyQualifiedFormat);
        if (parameter.RefKind != RefKind.None || parameter.NullableAnnotation == NullableAnnotation.Annotated) return null;
        if (Kind(parameter.Type) is { } kind) return new(parameter.Name, type, kind, null);
        return parameter.Type is INamedTypeSymbol { Name: "Items", TypeArguments: [var item] } list && InExplain(list) && Kind(item) is { } of
            ? new(parameter.Name, type, item.Name == "ClaimId" ? SlotKind.Steps : SlotKind.List, of) : null;
    }

    private static SlotKind? Kind(ITypeSymbol type)
    {
        if (type.SpecialType == SpecialType.System_Int32) return SlotKind.Count;
        if (type.SpecialType == SpecialType.System_String) return SlotKind.Text;
        for (ITypeSymbol? at = type; at is not null && at.SpecialType != SpecialType.System_Object; at = at.BaseType)
        {
            if (InExplain(at) && Base(at.Name) is { } kind) return kind;
        }

        return null;
    }

    private static SlotKind? Base(string name) => name switch
    {
        "Named" => SlotKind.Named,
        "Statement" => SlotKind.Statement,
        "Expr" => SlotKind.Formula,
        "Symbol" => SlotKind.Symbol,
        "Value" => SlotKind.Value,
        "ClaimId" => SlotKind.Steps,
        "Phrase" => SlotKind.Phrase,
        _ => null,
    };

    private static bool InExplain(ITypeSymbol type) => type.ContainingNamespace is { Name: "Explain", ContainingNamespace.IsGlobalNamespace: true };
}
