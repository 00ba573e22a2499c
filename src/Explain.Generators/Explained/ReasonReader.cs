using Microsoft.CodeAnalysis;

namespace Explain.Generators;

/// <summary>Reads comments as reasons.</summary>
/// <param name="symbols">The symbols of the method.</param>
/// <param name="findings">Where mistakes are put.</param>
/// <param name="mentions">Where rules are put that must be looked up.</param>
internal sealed class ReasonReader(HashSet<string> symbols, List<Finding> findings, List<Mention> mentions)
{
    private const string Start = "rule:";

    /// <summary>The reason at a place; what is missing is reported, unless another line has the comment for both.</summary>
    public ReasonModel? Read(Spot spot, DiagnosticDescriptor missing, string about)
    {
        if (spot.IsQuiet) return null;
        int before = findings.Count;
        ReasonModel? reason = Read(spot.Comment);
        if (reason is null && findings.Count == before) findings.Add(Finding.Of(missing, Place.Of(spot.At), about));
        return reason;
    }

    private ReasonModel? Read(SyntaxTrivia? comment)
    {
        if (comment is not { } found || Comments.Text(found) is not { Length: > 0 } text) return null;
        if (!text.StartsWith(Start, StringComparison.Ordinal)) return new(text, IsRule: false, []);
        Place at = Place.Of(found.GetLocation());
        string[] words = text.Substring(Start.Length).Split([' '], StringSplitOptions.RemoveEmptyEntries);
        if (words.Length == 0 || words.Skip(1).Any(w => w.Split('=') is not [{ Length: > 0 }, { Length: > 0 }]))
            return Bad(at, "write a rule as '// rule: sine-rule side=b opposite=B': its id, then role=symbol");
        RoleModel[] roles = [.. words.Skip(1).Select(w => w.Split('=')).Select(w => new RoleModel(w[0], w[1], IsCondition: false))];
        foreach (RoleModel role in roles.Where(r => !symbols.Contains(r.Pattern)))
            Bad(at, $"the role {role.Name} names {role.Pattern}, which is no symbol of this method{Nearest.Offer(role.Pattern, symbols)}");
        ReasonModel reason = new(words[0], IsRule: true, [.. roles]);
        mentions.Add(new(reason, at));
        return reason;
    }

    private ReasonModel? Bad(Place at, string why)
    {
        findings.Add(Finding.Of(Descriptors.BadReason, at, why));
        return null;
    }
}
