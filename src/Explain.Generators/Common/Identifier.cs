using System.Text;
using Microsoft.CodeAnalysis.CSharp;

namespace Explain.Generators;

/// <summary>Names and texts as C# writes them.</summary>
internal static class Identifier
{
    /// <summary>A name, marked where it is a word of the language.</summary>
    public static string Escape(string name) =>
        SyntaxFacts.GetKeywordKind(name) != SyntaxKind.None || SyntaxFacts.GetContextualKeywordKind(name) != SyntaxKind.None ? "@" + name : name;

    /// <summary>The name of a member for an id: sine-rule becomes SineRule.</summary>
    public static string Pascal(string id)
    {
        StringBuilder name = new();
        foreach (string word in id.Split(['-', '.'], StringSplitOptions.RemoveEmptyEntries))
            name.Append(char.ToUpperInvariant(word[0])).Append(word, 1, word.Length - 1);
        return name.Length == 0 || char.IsDigit(name[0]) ? "_" + name : name.ToString();
    }

    /// <summary>A text as a literal.</summary>
    public static string Literal(string text) => SymbolDisplay.FormatLiteral(text, quote: true);
}
