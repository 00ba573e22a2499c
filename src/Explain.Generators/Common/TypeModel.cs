using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Explain.Generators;

/// <summary>The type that a declaration stands in, as far as another part of it must repeat that.</summary>
/// <param name="Namespace">Its namespace; empty for none.</param>
/// <param name="Types">The types from the outermost to the one itself, each as it opens: <c>partial class Outer&lt;T&gt;</c>.</param>
/// <param name="FileName">A name for its generated file.</param>
/// <param name="IsPublic">Whether it is declared public.</param>
internal sealed record TypeModel(string Namespace, EquatableArray<string> Types, string FileName, bool IsPublic)
{
    private static readonly SymbolDisplayFormat Names = SymbolDisplayFormat.FullyQualifiedFormat.WithGlobalNamespaceStyle(SymbolDisplayGlobalNamespaceStyle.Omitted);

    public static TypeModel Of(INamedTypeSymbol type)
    {
        INamedTypeSymbol[] chain = [.. Chain(type).Reverse()];
        string space = type.ContainingNamespace.IsGlobalNamespace ? "" : type.ContainingNamespace.ToDisplayString(Names);
        string name = string.Join(".", chain.Select(t => t.MetadataName.Replace('`', '-')));
        return new(space, [.. chain.Select(Opening)], (space.Length == 0 ? name : space + "." + name).Replace("@", ""), type.DeclaredAccessibility == Accessibility.Public);
    }

    /// <summary>The type's name in full, as C# writes it.</summary>
    public string FullName => "global::" + (Namespace.Length == 0 ? "" : Namespace + ".") + string.Join(".", Types.Select(t => NameIn(t)));

    /// <summary>The first type from the inside that cannot have another part, if any.</summary>
    public static INamedTypeSymbol? NotPartial(INamedTypeSymbol type) => Chain(type).FirstOrDefault(t => t.IsFileLocal ||
        !t.DeclaringSyntaxReferences.Any(r => r.GetSyntax() is TypeDeclarationSyntax s && s.Modifiers.Any(m => m.ValueText == "partial")));

    private static IEnumerable<INamedTypeSymbol> Chain(INamedTypeSymbol? type)
    {
        for (; type is not null; type = type.ContainingType) yield return type;
    }

    /// <summary>The name in an opening: <c>Outer&lt;T&gt;</c> in <c>partial class Outer&lt;T&gt;</c>.</summary>
    private static string NameIn(string opening)
    {
        int arguments = opening.IndexOf('<');
        return opening.Substring(opening.LastIndexOf(' ', arguments < 0 ? opening.Length - 1 : arguments) + 1);
    }

    private static string Opening(INamedTypeSymbol type)
    {
        string kind = (type.IsRecord, type.TypeKind) switch
        {
            (true, TypeKind.Struct) => "record struct",
            (true, _) => "record",
            (_, TypeKind.Struct) => "struct",
            (_, TypeKind.Interface) => "interface",
            _ => "class",
        };
        string arguments = type.TypeParameters.Length == 0 ? "" : "<" + string.Join(", ", type.TypeParameters.Select(p => Identifier.Escape(p.Name))) + ">";
        return "partial " + kind + " " + Identifier.Escape(type.Name) + arguments;
    }
}
