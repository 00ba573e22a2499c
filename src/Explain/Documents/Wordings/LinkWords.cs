namespace Explain;

/// <summary>How one measurement moves the parts of a formula, from the inside outwards.</summary>
internal static partial class LinkWords
{
    /// <summary>The links as one clause.</summary>
    public static Phrase Of(Items<Link> links) =>
        Enumerable.Range(1, links.Count - 1).Aggregate(Of(links[0]), (soFar, i) => Joined(soFar, links[i - 1].Says.What, links[i]));

    private static Phrase Joined(Phrase soFar, Expr before, Link next) => next switch
    {
        { Kind: LinkKind.Divisor } => And(soFar, Of(next)),
        { Says.What: Apply { To: var angle } } when angle == before => AndIt(soFar, next.Kind == LinkKind.Acute ? ItIsAcute() : ItIsObtuse(), Moves(next)),
        { Says.What: var what } when what.Subtrees().Contains(before) => So(soFar, Of(next)),
        _ => Also(soFar, Of(next)),
    };

    private static Phrase Moves(Link link) => link.Says.Increases ? Rises(link.Says.What) : Falls(link.Says.What);

    private static Phrase Of(Link link) => (link.Kind, link.Says) switch
    {
        (LinkKind.Acute, { What: Apply { To: var angle }, Increases: var up }) => up ? AcuteRises(angle, link.Says.What) : AcuteFalls(angle, link.Says.What),
        (LinkKind.Obtuse, { What: Apply { To: var angle }, Increases: var up }) => up ? ObtuseRises(angle, link.Says.What) : ObtuseFalls(angle, link.Says.What),
        (LinkKind.Divisor, { Increases: var up }) => up ? DivisorRises(link.Says.What) : DivisorFalls(link.Says.What),
        _ => Moves(link),
    };

    [Phrase("link.so")]
    private static partial Phrase So(Phrase first, Phrase next);

    [Phrase("link.and-it")]
    private static partial Phrase AndIt(Phrase first, Phrase size, Phrase next);

    [Phrase("link.it-is-acute")]
    private static partial Phrase ItIsAcute();

    [Phrase("link.it-is-obtuse")]
    private static partial Phrase ItIsObtuse();

    [Phrase("link.also")]
    private static partial Phrase Also(Phrase first, Phrase next);

    [Phrase("link.and")]
    private static partial Phrase And(Phrase first, Phrase next);

    [Phrase("link.rises")]
    private static partial Phrase Rises(Expr what);

    [Phrase("link.falls")]
    private static partial Phrase Falls(Expr what);

    [Phrase("link.acute-rises")]
    private static partial Phrase AcuteRises(Expr angle, Expr what);

    [Phrase("link.acute-falls")]
    private static partial Phrase AcuteFalls(Expr angle, Expr what);

    [Phrase("link.obtuse-rises")]
    private static partial Phrase ObtuseRises(Expr angle, Expr what);

    [Phrase("link.obtuse-falls")]
    private static partial Phrase ObtuseFalls(Expr angle, Expr what);

    [Phrase("link.divisor-rises")]
    private static partial Phrase DivisorRises(Expr what);

    [Phrase("link.divisor-falls")]
    private static partial Phrase DivisorFalls(Expr what);
}
