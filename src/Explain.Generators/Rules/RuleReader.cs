using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Explain.Generators;

/// <summary>Reads the declarations of rules: relations on methods, deductions on classes.</summary>
internal static class RuleReader
{
    public static EquatableArray<Reading<RuleModel>> Read(GeneratorAttributeSyntaxContext context, CancellationToken cancel)
    {
        List<Reading<RuleModel>> rules = [];
        foreach (AttributeData attribute in context.Attributes)
        {
            cancel.ThrowIfCancellationRequested();
            if (attribute.ApplicationSyntaxReference is not { } written || !context.TargetNode.Span.Contains(written.Span)) continue;
            rules.Add(Read(context, attribute, Place.Of(written.GetSyntax(cancel))));
        }

        return [.. rules];
    }

    private static Reading<RuleModel> Read(GeneratorAttributeSyntaxContext context, AttributeData attribute, Place at)
    {
        INamedTypeSymbol type = context.TargetSymbol as INamedTypeSymbol ?? context.TargetSymbol.ContainingType;
        RuleWords words = RuleWords.Of(attribute);
        List<Finding> findings = [];
        if (TypeModel.NotPartial(type) is { } part) findings.Add(Finding.Of(Descriptors.NotPartial, at, part.Name, words.Id));
        if (!Ids.IsId(words.Id)) findings.Add(Finding.Of(Descriptors.BadDeclaration, at, "rule", words.Id, Ids.Form));
        Law? law = null;
        if (context.TargetSymbol is IMethodSymbol method)
            law = LawReader.Read(method, (MethodDeclarationSyntax)context.TargetNode, context.SemanticModel, words.Id, findings);
        else if (words.Then is null)
            findings.Add(Finding.Of(Descriptors.NoMeaning, at, words.Id, "a deduction needs Then"));
        EquatableArray<RoleModel> roles = Roles(words, law, findings, at);
        if (findings.Count > 0) return new(null, at, [.. findings]);
        if (words.Source is null) findings.Add(Finding.Of(Descriptors.NoSource, at, words.Id));
        return new(new(TypeModel.Of(type), words.Id, [.. words.When.Select(w => Named(w)?.Pattern ?? w)], words.Then, law?.Left, law?.Right,
            law?.Quantities ?? [], roles, words.Source ?? "", words.Marks), at, [.. findings]);
    }

    private static EquatableArray<RoleModel> Roles(RuleWords words, Law? law, List<Finding> findings, Place at)
    {
        List<RoleModel> roles = [.. law?.Quantities ?? []];
        roles.AddRange(words.When.Select(Named).OfType<RoleModel>().Select(r => r with { IsCondition = true }));
        foreach (string text in words.Roles)
        {
            if (Named(text) is { } role) roles.Add(role);
            else Fault($"the role \"{text}\" has no name; write it as \"name: pattern\"");
        }

        foreach (IGrouping<string, RoleModel> twice in roles.GroupBy(r => r.Name).Where(g => g.Key == "steps" || g.Count() > 1))
            Fault($"the role {twice.Key} is named twice, or is 'steps', which every rule has; give it another name");
        return [.. roles];

        void Fault(string why) => findings.Add(Finding.Of(Descriptors.BadDeclaration, at, "rule", words.Id, why));
    }

    /// <summary>A role written as <c>name: pattern</c>; the name begins with a small letter, so a ratio AB : BC is none.</summary>
    private static RoleModel? Named(string text)
    {
        int colon = text.IndexOf(": ", StringComparison.Ordinal);
        return colon > 0 && text[0] is >= 'a' and <= 'z' && text.Take(colon).All(char.IsLetterOrDigit)
            ? new(text.Substring(0, colon), text.Substring(colon + 2).Trim(), IsCondition: false) : null;
    }
}
