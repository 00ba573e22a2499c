using Microsoft.CodeAnalysis;

namespace Explain.Generators;

/// <summary>What a rule's attribute says.</summary>
internal sealed record RuleWords(string Id, EquatableArray<string> When, string? Then, EquatableArray<string> Roles, string? Source, int Marks)
{
    public static RuleWords Of(AttributeData attribute)
    {
        string id = attribute.ConstructorArguments.Length == 1 ? attribute.ConstructorArguments[0].Value as string ?? "" : "";
        Dictionary<string, TypedConstant> named = attribute.NamedArguments.ToDictionary(a => a.Key, a => a.Value);
        return new(id, Many("When"), One("Then") as string, Many("Roles"), One("Source") as string, One("Marks") as int? ?? 1);

        object? One(string name) => named.TryGetValue(name, out TypedConstant value) ? value.Value : null;

        EquatableArray<string> Many(string name) => named.TryGetValue(name, out TypedConstant value) && value.Kind == TypedConstantKind.Array && !value.IsNull
            ? [.. value.Values.Select(v => v.Value as string ?? "")] : [];
    }
}
