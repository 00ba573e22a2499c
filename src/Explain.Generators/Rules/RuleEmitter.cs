namespace Explain.Generators;

/// <summary>Writes the rules that one type declares as values: a nested class <c>Book</c>.</summary>
internal static class RuleEmitter
{
    public static string Emit(Group<RuleModel> group) => new SourceWriter().Part(group.In, writer =>
    {
        writer.Line("/// <summary>The rules declared here, as values.</summary>");
        writer.Open((group.In.IsPublic ? "public" : "internal") + " static class Book");
        foreach (RuleModel rule in group.Models)
        {
            writer.Line($"/// <summary>The rule {rule.Id}.</summary>");
            writer.Line($"public static global::Explain.Rule {Identifier.Pascal(rule.Id)} {{ get; }} = {New(rule)};");
            writer.Line("");
        }

        writer.Line("/// <summary>All of them, in the order of their declarations.</summary>");
        writer.Line($"public static global::Explain.Items<global::Explain.Rule> All {{ get; }} = [{string.Join(", ", group.Models.Select(r => Identifier.Pascal(r.Id)))}];");
        writer.Close();
    }).ToString();

    private static string New(RuleModel rule)
    {
        string then = rule.Then is null ? "null" : Identifier.Literal(rule.Then);
        string law = rule.Left is null ? "null" : $"new global::Explain.Equation({NodeEmitter.Emit(Squares.In(rule.Left))}, {NodeEmitter.Emit(Squares.In(rule.Right!))})";
        return $"new(new global::Explain.RuleId({Identifier.Literal(rule.Id)}), [{string.Join(", ", rule.When.Select(Identifier.Literal))}], {then}, {law}, "
            + $"[{Roles(rule.Quantities)}], [{Roles(rule.Roles)}], {Identifier.Literal(rule.Source)}, {Number.Plain(rule.Marks)})";
    }

    private static string Roles(EquatableArray<RoleModel> roles) => string.Join(", ", roles.Select(r =>
        $"new global::Explain.RolePattern({Identifier.Literal(r.Name)}, {Identifier.Literal(r.Pattern)}, {(r.IsCondition ? "true" : "false")})"));
}
