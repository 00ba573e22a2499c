namespace Explain;

/// <summary>Decides again what deductions say of values.</summary>
internal sealed class Saying(Track track, Terrain here, Terrain around)
{
    /// <summary>Null where what a deduction says holds or says nothing of values, and otherwise what is wrong.</summary>
    public Break? Fails(Deduction deduction) => deduction.Says switch
    {
        Compare says when deduction.Why.When.Count == 0 => Compared(says, deduction.Why.From),
        Varies varies => Moves(varies, deduction.Why.From)
            ?? deduction.Why.Roles.Select(r => r.Is).OfType<Links>().SelectMany(l => l.Are).Select(l => Moves(l, deduction.Why.From)).FirstOrDefault(b => b is not null),
        _ => null,
    };

    /// <summary>A relation between quantities that have no value yet is for its rule to say.</summary>
    private Break? Compared(Compare says, Items<ClaimId> from)
    {
        Expr[] terms = [.. says.Terms.Select(t => t.Substitute(e => e is SymbolUse use && track.OneOf(from, use.Symbol) is { } claim ? new ValueOf(claim) : null))];
        if (terms.Any(t => t.Symbols().Count > 0)) return null;
        return says.Between.Select((relation, i) => relation == Relation.Equal ? here.Agree(terms[i], terms[i + 1]) ? null : Break.StatementFails
            : here.Everywhere(Compare.Of(terms[i], relation, terms[i + 1]), Break.StatementFails)).FirstOrDefault(b => b is not null);
    }

    private Break? Moves(Varies varies, Items<ClaimId> from) =>
        track.Giving(varies.With, from) is { } with ? around.Moves(track.Resolved(varies.What, from), with, varies.Increases) : Break.Undecided;

    /// <summary>A part moves as it says, and the angle of a ratio stays acute or obtuse as it says.</summary>
    private Break? Moves(Link link, Items<ClaimId> from)
    {
        if (Moves(link.Says, from) is { } why) return why;
        if (link is not { Kind: LinkKind.Acute or LinkKind.Obtuse, Says.What: Apply { To: var angle } }) return null;
        return around.Everywhere(Compare.Of(track.Resolved(angle, from), link.Kind == LinkKind.Acute ? Relation.Less : Relation.Greater, Expr.Degrees(90)), Break.StatementFails);
    }
}
