using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Explain.Generators;

/// <summary>Reads an explained method.</summary>
internal static class ExplainedReader
{
    public static ExplainedReading Read(GeneratorAttributeSyntaxContext context, CancellationToken cancel)
    {
        MethodDeclarationSyntax syntax = (MethodDeclarationSyntax)context.TargetNode;
        IMethodSymbol method = (IMethodSymbol)context.TargetSymbol;
        Signature signature = Signature.Of(method);
        Place at = Place.Of(syntax.Identifier);
        Finding[] wrong = [.. SignatureReader.Check(method, syntax, signature)];
        if (wrong.Length > 0) return new(new(null, at, [.. wrong]), []);
        Dictionary<string, UnitModel> wishes = [];
        BodyReader body;
        int before;
        do
        {
            cancel.ThrowIfCancellationRequested();
            before = wishes.Count;
            body = new(context.SemanticModel, method, signature, wishes);
            body.Read(syntax);
        }
        while (wishes.Count > before);
        Finding[] findings = [.. WithoutConsequences(body.Findings)];
        bool failed = findings.Any(f => Descriptors.Find(f.Id).DefaultSeverity == DiagnosticSeverity.Error);
        ExplainedModel model = new(TypeModel.Of(method.ContainingType), method.Name, signature.Property, method.DeclaredAccessibility == Accessibility.Public,
            Summary.Of(syntax), signature.Parameters, signature.Result, [.. body.Lines], [.. body.Calls]);
        return new(new(failed ? null : model, at, [.. findings]), [.. body.Mentions]);
    }

    /// <summary>Where something could not be read, units and uses of what was left out say nothing.</summary>
    private static IEnumerable<Finding> WithoutConsequences(IReadOnlyList<Finding> findings) =>
        findings.Any(f => f.Id == Descriptors.BadStatement.Id || f.Id == Descriptors.UnknownCall.Id)
            ? findings.Where(f => f.Id != Descriptors.OtherUnit.Id && f.Id != Descriptors.KindsApart.Id && f.Id != Descriptors.Unused.Id)
            : findings;
}
