namespace Explain;

/// <summary>Shows the numbers of an inequality: angle BAC + angle ABC = 38° + 58.769…° = 96.769…° &lt; 180°.</summary>
internal sealed class ComparisonLine(Speaker speaker, IClaims claims)
{
    /// <summary>The line; null where a symbol has no value among the claims that the step rests on, or there is nothing to show.</summary>
    public MathPiece? Of(Compare compare, Items<ClaimId> from)
    {
        if (compare.Between.Contains(Relation.Equal) || !compare.Terms.Any(t => t.Symbols().Count > 0)) return null;
        List<MathPiece> row = [];
        for (int i = 0; i < compare.Terms.Count; i++)
        {
            if (i > 0) row.Add(MathBuilder.Sign(compare.Between[i - 1]));
            if (Term(compare.Terms[i], from) is not { } term) return null;
            row.AddRange(term is MathRow { Level: MathLevel.Relation } chain ? chain.Of : [term]);
        }

        return new MathRow([.. row], MathLevel.Relation);
    }

    /// <summary>The numbers alone: 1.539… &lt; 1.8 &lt; 2.5; null where one has no value, or they are equal and say nothing new.</summary>
    public MathPiece? Numbers(Compare compare, Items<ClaimId> from)
    {
        Expr[] bound = [.. compare.Terms.Select(t => t.Substitute(e => e is SymbolUse use ? Value(use.Symbol, from) : null))];
        if (compare.Between.Contains(Relation.Equal) || bound.Any(b => b.Symbols().Count > 0)) return null;
        return new MathRow([.. bound.SelectMany((b, i) => i == 0 ? Worked(b) : [MathBuilder.Sign(compare.Between[i - 1]), .. Worked(b)])], MathLevel.Relation);
    }

    /// <summary>A number, or a formula of numbers and its value.</summary>
    private Items<MathPiece> Worked(Expr bound) => bound is ValueOf or Quantity || claims.Evaluate(bound) is not { } value ? [speaker.Math.Formula(bound)]
        : MathBuilder.Chain([speaker.Math.Formula(bound), speaker.Math.Number(value)]) is MathRow { Level: MathLevel.Relation } chain ? chain.Of : [speaker.Math.Number(value)];

    private MathPiece? Term(Expr term, Items<ClaimId> from)
    {
        Expr bound = term.Substitute(e => e is SymbolUse use ? Value(use.Symbol, from) : null);
        if (bound.Symbols().Count > 0 || claims.Evaluate(bound) is not { } value) return null;
        return MathBuilder.Chain([speaker.Math.Term(term), speaker.Math.Term(bound), speaker.Math.Value(value, isGiven: term is Quantity)]);
    }

    private ValueOf? Value(Symbol symbol, Items<ClaimId> from) => from.Where(id => claims.QuantityOf(id) == symbol).Select(id => new ValueOf(id)).FirstOrDefault();
}
