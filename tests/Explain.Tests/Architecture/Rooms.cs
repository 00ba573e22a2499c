using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Explain.Tests.Architecture;

/// <summary>The order of the rooms, and who uses whom against it.</summary>
internal static class Rooms
{
    /// <summary>Each room may use those before it. Reasoning and Verifying stand side by side: neither uses the other.</summary>
    private static readonly string[][] Order =
    [
        ["Ids"], ["Numbers"], ["Formulas"], ["Figures"], ["Statements"], ["Problems"], ["Placing"], ["Rules"], ["Solutions"],
        ["Reasoning", "Verifying"], ["Topics"], ["Solving"], ["Reading"], ["Tutoring"], ["Variants"], ["Examining"], ["Documents"],
    ];

    public static int LevelOf(string room) => Array.FindIndex(Order, level => level.Contains(room));

    /// <summary>Each use of something that a room may not use, with its file and line.</summary>
    public static IEnumerable<string> Breaches(CSharpCompilation compilation, string only = "") =>
        compilation.SyntaxTrees.Where(t => t.FilePath.Contains(only, StringComparison.Ordinal)).SelectMany(tree => Breaches(compilation.GetSemanticModel(tree), tree)).Distinct();

    private static IEnumerable<string> Breaches(SemanticModel model, SyntaxTree tree)
    {
        foreach (SimpleNameSyntax name in tree.GetRoot().DescendantNodes().OfType<SimpleNameSyntax>())
        {
            if (Owner(model, name) is not { } room || Declared(model.GetSymbolInfo(name).Symbol) is not { } used || room == used) continue;
            if (LevelOf(used) >= LevelOf(room)) yield return $"{room} uses {used}: {name} in {tree.FilePath}, line {name.GetLocation().GetLineSpan().StartLinePosition.Line + 1}";
        }
    }

    /// <summary>The room that a name stands in: the folder of its file, or for generated code that of the declaration it completes.</summary>
    private static string? Owner(SemanticModel model, SyntaxNode name)
    {
        if (RoomOf(model.SyntaxTree.FilePath) is { } room) return room;
        return name.Ancestors().OfType<BaseTypeDeclarationSyntax>().FirstOrDefault() is { } type ? Declared(model.GetDeclaredSymbol(type)) : null;
    }

    private static string? Declared(ISymbol? symbol)
    {
        ISymbol? type = symbol is null or INamespaceSymbol or ILocalSymbol or IParameterSymbol ? null : symbol as INamedTypeSymbol ?? symbol.ContainingType;
        IEnumerable<SyntaxReference> places = (symbol?.DeclaringSyntaxReferences ?? []).Concat(type?.DeclaringSyntaxReferences ?? []);
        return type is null ? null : places.Select(p => RoomOf(p.SyntaxTree.FilePath)).FirstOrDefault(r => r is not null);
    }

    private static string? RoomOf(string path)
    {
        const string library = "src/Explain/";
        if (!path.StartsWith(library, StringComparison.Ordinal)) return null;
        string[] parts = path[library.Length..].Split('/');
        return parts.Length > 1 ? parts[0] : null;
    }
}
