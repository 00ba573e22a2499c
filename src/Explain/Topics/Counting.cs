namespace Explain;

/// <summary>How many triangles have the given measurements, where that is asked for.</summary>
internal sealed class Counting(RuleBook book, Ledger ledger, Polygon triangle)
{
    /// <summary>Rules that count from the measurements alone, in the order in which a reader would think of them.</summary>
    private static readonly Items<string> Rules =
    [
        "no-triangle-from-three-sides", "longest-side", "no-triangle-from-two-angles", "one-triangle-from-two-angles", "one-triangle-from-two-angles-and-a-side-opposite",
        "one-triangle-with-the-angle-between", "no-triangle-with-a-large-angle", "no-triangle-that-reaches",
    ];

    /// <summary>The steps, the comparison that decides first; none where no rule counts these measurements.</summary>
    public Items<Step> Steps()
    {
        Deduce deduce = new(book, ledger);
        if (Rules.SelectMany(Instances).FirstOrDefault(i => i.When.OfType<Compare>().All(ledger.Holds)) is not { } instance) return [];
        Compare decides = instance.When.OfType<Compare>().Last();
        Deduction? compared = decides.Terms is [SymbolUse, Quantity] ? null : deduce.Compared(decides.Terms, decides.Between)! with { Title = Title(instance) };
        return [.. compared is null ? (Items<Step>)[] : [compared], deduce.By(instance)!];
    }

    private static Phrase Title(Instance instance)
    {
        Length Side(string from, string to) => (Length)instance.Names.Of(new Length(new(from), new(to)));
        return instance.Schema.Rule.Id.Name switch
        {
            "no-triangle-from-three-sides" or "longest-side" => TopicPhrases.CompareLongest(Side("A", "B")),
            "no-triangle-with-a-large-angle" => TopicPhrases.CompareSides(Side("C", "B"), Side("A", "C")),
            "no-triangle-that-reaches" => TopicPhrases.CompareWithTheHeight(Side("C", "B"), instance.Names.Of(new Point("C")), new Line(instance.Names.Of(new Point("A")), instance.Names.Of(new Point("B")))),
            _ => TopicPhrases.AddTheAngles(),
        };
    }

    private IEnumerable<Instance> Instances(string rule) => Explain.Instances.Of(book.Find(new RuleId(rule))!, ledger.Facts, ledger.Arrangement);

    /// <summary>The step by what the working found: as many triangles as cases, or one whose sides each have one value.</summary>
    public Deduction After(Split? split, int cases)
    {
        ClaimId[] from = split is not null ? [split.Id] : [.. TriangleParts.Sides(triangle).Select(s => ledger.ClaimOf(s))];
        return new(ledger.NextStep(), CountPattern.Of(triangle, int.Max(1, cases)), new(new("as-many-as-cases"), [], [.. from]));
    }
}
