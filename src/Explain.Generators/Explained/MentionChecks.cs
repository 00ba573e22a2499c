namespace Explain.Generators;

/// <summary>Looks up the rules that comments name. Where neither rules nor wordings are known, nothing can be said.</summary>
internal static class MentionChecks
{
    public static IEnumerable<Finding> Run(IEnumerable<Mention> mentions, IReadOnlyList<RuleModel> rules, IReadOnlyList<WordingText> files)
    {
        Dictionary<string, RuleModel> declared = rules.GroupBy(r => r.Id).ToDictionary(g => g.Key, g => g.First());
        HashSet<string> known = [.. declared.Keys, .. files.SelectMany(f => WordingFile.Read(f.Text).Lines).Select(l => l.Id)];
        foreach (Mention mention in known.Count == 0 ? [] : mentions)
        {
            string id = mention.Reason.Text;
            if (!known.Contains(id)) yield return Finding.Of(Descriptors.BadReason, mention.At, $"there is no rule {id}{Nearest.Offer(id, known)}");
            else if (declared.TryGetValue(id, out RuleModel? rule))
                foreach (RoleModel role in mention.Reason.Roles.Where(r => rule.Roles.All(own => own.Name != r.Name)))
                    yield return Finding.Of(Descriptors.BadReason, mention.At, $"the rule {id} has no role {role.Name}; its roles are {string.Join(", ", rule.Roles.Select(r => r.Name))}");
        }
    }
}
