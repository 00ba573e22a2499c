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
        bool failed = body.Findings.Any(f => Descriptors.Find(f.Id).DefaultSeverity == DiagnosticSeverity.Error);
        ExplainedModel model = new(TypeModel.Of(method.ContainingType), method.Name, signature.Property, method.DeclaredAccessibility == Accessibility.Public,
            Summary.Of(syntax), signature.Parameters, signature.Result, [.. body.Lines], [.. body.Calls]);
        return new(new(failed ? null : model, at, [.. body.Findings]), [.. body.Mentions]);
    }
}
