using Microsoft.CodeAnalysis;

namespace Explain.Generators;

/// <summary>What an explained method takes and gives, as its declaration says; enough to call it from another.</summary>
internal sealed record Signature(EquatableArray<ParameterModel> Parameters, LetterNode Result, string Property, string FullName)
{
    /// <summary>Reads a declaration; an unknown unit counts as none here, and is reported by <see cref="SignatureReader"/>.</summary>
    public static Signature Of(IMethodSymbol method)
    {
        ParameterModel[] parameters = [.. method.Parameters.Select(Parameter)];
        LetterNode result = new(Text(method.GetReturnTypeAttributes(), "Symbol") ?? method.Name, Unit(method.GetReturnTypeAttributes()));
        ISymbol[] overloads = [.. method.ContainingType.GetMembers(method.Name).OfType<IMethodSymbol>().Where(NodeReader.IsExplained)];
        int index = Array.FindIndex(overloads, o => SymbolEqualityComparer.Default.Equals(o, method.OriginalDefinition));
        string property = index <= 0 ? method.Name : method.Name + Number.Plain(index + 1);
        string type = method.ContainingType.ToDisplayString(SymbolDisplayFormat.FullyQualifiedFormat);
        return new([.. parameters], result, property, type + ".Formulas." + Identifier.Escape(property));
    }

    private static ParameterModel Parameter(IParameterSymbol parameter) =>
        new(parameter.Name, parameter.Type.ToDisplayString(), new(Text(parameter.GetAttributes(), "Symbol") ?? parameter.Name, Unit(parameter.GetAttributes())));

    public static string? Text(IEnumerable<AttributeData> attributes, string name) => attributes
        .FirstOrDefault(a => a.AttributeClass?.ToDisplayString() == "Explain." + name + "Attribute") is { ConstructorArguments: [{ Value: string text }] } ? text : null;

    private static UnitModel Unit(IEnumerable<AttributeData> attributes) =>
        Text(attributes, "Unit") is { Length: > 0 } text ? UnitModel.Parse(text) ?? UnitModel.None : UnitModel.None;
}
