using System.Collections.Immutable;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Explain.Generators;

/// <summary>Says what is wrong with the declaration of an explained method.</summary>
internal static class SignatureReader
{
    public static IEnumerable<Finding> Check(IMethodSymbol method, MethodDeclarationSyntax syntax, Signature signature)
    {
        Place at = Place.Of(syntax.Identifier);
        if (TypeModel.NotPartial(method.ContainingType) is { } part) yield return Finding.Of(Descriptors.NotPartial, at, part.Name, method.Name);
        if (!method.IsStatic || method.IsGenericMethod || method.ReturnsByRef) yield return Bad(at, "an explained method is static, not generic, and returns by value");
        if (method.ReturnType.SpecialType != SpecialType.System_Double) yield return Bad(at, $"its result is {method.ReturnType.ToDisplayString()}, and must be double");
        foreach (IParameterSymbol parameter in method.Parameters)
        {
            Place place = Place.Of(parameter.Locations[0]);
            if (parameter.Type.SpecialType is not (SpecialType.System_Double or SpecialType.System_Int32))
                yield return Bad(place, $"{parameter.Name} must be double, or int for a count");
            else if (parameter.RefKind != RefKind.None || parameter.IsParams || parameter.HasExplicitDefaultValue)
                yield return Bad(place, $"{parameter.Name} must be a plain parameter, without ref, out, in, params or a default");
            if (Unknown(parameter.GetAttributes(), place) is { } finding) yield return finding;
        }

        if (Unknown(method.GetReturnTypeAttributes(), at) is { } unknown) yield return unknown;
        Dictionary<string, string> seen = new() { [signature.Result.Name] = "the result" };
        foreach ((ParameterModel parameter, IParameterSymbol symbol) in signature.Parameters.Zip(method.Parameters, (p, s) => (p, s)))
        {
            if (seen.TryGetValue(parameter.Symbol.Name, out string? other))
                yield return Finding.Of(Descriptors.SymbolTwice, Place.Of(symbol.Locations[0]), parameter.Symbol.Name, other, parameter.Name);
            else
                seen.Add(parameter.Symbol.Name, parameter.Name);
        }

        Finding Bad(Place place, string why) => Finding.Of(Descriptors.BadSignature, place, method.Name, why);
    }

    private static Finding? Unknown(ImmutableArray<AttributeData> attributes, Place at) =>
        Signature.Text(attributes, "Unit") is { Length: > 0 } text && UnitModel.Parse(text) is null
            ? Finding.Of(Descriptors.UnknownUnit, at, text, Nearest.Offer(text, UnitModel.Signs)) : null;
}
