namespace Explain;

/// <summary>The lengths that each case of a split supposes, in words; a limit comes with its value where it is named first.</summary>
internal sealed class Supposing
{
    private readonly Page page;
    private readonly Split split;
    private readonly Symbol? parameter;
    private readonly HashSet<Expr> named = [];

    public Supposing(Page page, Split split) =>
        (this.page, this.split, parameter) = (page, split, Span.Parameter([.. split.Cases.Select(c => c.Assume)]));

    /// <summary>The quantity whose values the cases suppose; if, where they suppose something else.</summary>
    public Items<Inline> Heading => parameter is null ? Sentence.Capital(page.Speaker.Say(PageWords.CaseColumn())) : [new MathRun(page.Speaker.Math.Term(parameter))];

    public Items<Inline> Of(Case one)
    {
        if (parameter is null) return page.Speaker.Say(one.Assume);
        Span span = Span.Of(one.Assume, parameter)!;
        if (span.IsPoint) return Say(StepWords.Exactly(span.Low!), span.Low!);
        Items<Inline> low = span.Low is { } from ? Say(span.HasLow ? StepWords.AtLeast(from) : StepWords.Longer(from), from) : [];
        Items<Inline> high = span.High is { } to ? Say(span.HasHigh ? StepWords.AtMost(to) : StepWords.Shorter(to), to) : [];
        return [.. low, .. low.Count > 0 && high.Count > 0 ? new[] { new WordRun(", ") } : [], .. high];
    }

    private Items<Inline> Say(Phrase phrase, Expr limit) => page.Speaker.Say(phrase, ("than", [new MathRun(Limit(limit))]));

    private MathPiece Limit(Expr limit) => named.Add(limit) && limit is SymbolUse use && split.Why.From.FirstOrDefault(id => ((IClaims)page.Claims).QuantityOf(id) == use.Symbol) is { } claim
        ? page.Speaker.Math.Compare(Compare.Equal(limit, new ValueOf(claim))) : page.Speaker.Math.Term(limit);
}
