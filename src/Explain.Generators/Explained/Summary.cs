using System.Xml;
using System.Xml.Linq;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Explain.Generators;

/// <summary>Reads the summary of a method from its text, since a project without a documentation file does not parse it.</summary>
internal static class Summary
{
    public static string Of(MethodDeclarationSyntax method)
    {
        IEnumerable<string> lines = method.GetLeadingTrivia().ToFullString().Split('\n').Select(l => l.Trim());
        string comment = string.Join(" ", lines.Where(l => l.StartsWith("///", StringComparison.Ordinal)).Select(l => l.Substring(3).Trim()));
        try
        {
            return XElement.Parse("<doc>" + comment + "</doc>").Element("summary") is { } summary ? string.Concat(summary.Nodes().Select(Text)).Trim() : "";
        }
        catch (XmlException)
        {
            return "";
        }
    }

    /// <summary>Words as they stand, and of a reference the name.</summary>
    private static string Text(XNode node) => node switch
    {
        XText text => text.Value,
        XElement { IsEmpty: false } element => element.Value,
        XElement element => element.FirstAttribute?.Value.Split('.', ':').Last() ?? "",
        _ => "",
    };
}
