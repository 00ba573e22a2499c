namespace Explain.Generators;

/// <summary>Writes a line of an explained method as the C# that builds it.</summary>
internal static class LineEmitter
{
    public static string Emit(LineModel line) => line switch
    {
        ValueLine v => New("ExplainedValue", line, Letter(v.Symbol), NodeEmitter.Emit(v.Is), Unit(v.Symbol)),
        ResultLine r => New("ExplainedResult", line, Letter(r.Symbol), NodeEmitter.Emit(r.Is), Unit(r.Symbol)),
        CallLine c => New("ExplainedCall", line, Letter(c.Symbol), c.Formula, List(c.Arguments.Select(NodeEmitter.Emit))),
        RequireLine r => New("ExplainedRequirement", line, List(r.Holds.Select(Emit))),
        BranchLine b => New("ExplainedBranch", line, List(b.If.Select(Emit)), List(b.Then.Select(Emit)), List(b.Otherwise.Select(Emit))),
        _ => throw new ArgumentException(line.GetType().Name, nameof(line)),
    };

    public static string Letter(LetterNode letter) => $"new global::Explain.Letter({Identifier.Literal(letter.Name)})";

    private static string Unit(LetterNode letter) => (letter.Of ?? UnitModel.None).Emit();

    private static string Emit(ConditionModel condition) =>
        $"new global::Explain.ExplainedCondition({NodeEmitter.Emit(condition.Left)}, global::Explain.Relation.{condition.Relation}, {NodeEmitter.Emit(condition.Right)})";

    private static string New(string type, LineModel line, params string[] arguments) => $"new global::Explain.{type}({string.Join(", ", arguments)}, {Reason(line.Reason)})";

    private static string Reason(ReasonModel? reason) => reason switch
    {
        null => "null",
        { IsRule: false } => $"new global::Explain.WrittenReason({Identifier.Literal(reason.Text)})",
        _ => $"new global::Explain.RuleReason(new global::Explain.RuleId({Identifier.Literal(reason.Text)}), "
            + List(reason.Roles.Select(r => $"new global::Explain.RuleReasonRole({Identifier.Literal(r.Name)}, new global::Explain.Letter({Identifier.Literal(r.Pattern)}))")) + ")",
    };

    private static string List(IEnumerable<string> items) => "[" + string.Join(", ", items) + "]";
}
