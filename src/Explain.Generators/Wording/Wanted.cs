namespace Explain.Generators;

/// <summary>An id that has words: declared somewhere, with what its words may place.</summary>
/// <param name="Id">The id in the wording files.</param>
/// <param name="Noun">What it is: a phrase or a rule.</param>
/// <param name="Slots">What its words may place.</param>
/// <param name="IsOptional">Whether it may go without words.</param>
/// <param name="At">Where it is declared.</param>
internal sealed record Wanted(string Id, string Noun, EquatableArray<Slot> Slots, bool IsOptional, Place At)
{
    public static Wanted Of(PhraseModel phrase, Place at) =>
        new(phrase.Id, "phrase", [.. phrase.Parameters.Select(p => new Slot(p.Name, p.Kind, IsCondition: false))], IsOptional: false, at);

    /// <summary>A rule's reason, and the further texts that it may have.</summary>
    public static IEnumerable<Wanted> Of(RuleModel rule, Place at)
    {
        Slot[] slots = [.. rule.Roles.Select(r => new Slot(r.Name, SlotKind.Named, r.IsCondition)), new("steps", SlotKind.Steps, IsCondition: false)];
        Slot[] free = [.. slots.Select(s => s with { IsCondition = false })];
        yield return new(rule.Id, "rule", [.. slots], IsOptional: false, at);
        yield return new(rule.Id + ".again", "rule", [.. slots], IsOptional: true, at);
        yield return new(rule.Id + ".title", "rule", [.. free], IsOptional: true, at);
        yield return new(rule.Id + ".look", "rule", [.. free], IsOptional: true, at);
    }
}
