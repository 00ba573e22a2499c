namespace Explain;

/// <summary>How many triangles there would be if the side that swings were shorter or longer: a case for each stretch of its length.</summary>
internal sealed class OtherLengths(RuleBook book, Ledger ledger, SwingingSide given, AmbiguousCase count)
{
    /// <summary>With an acute angle, from the shortest length on.</summary>
    private static readonly Items<string> Acute = ["no-triangle-below-the-height", "one-triangle-that-just-reaches", "two-triangles", "one-triangle-with-the-longer-side-opposite"];

    private static readonly Items<string> Large = ["no-triangle-with-a-large-angle", "one-triangle-with-a-large-angle"];

    private bool IsAcute => given.IsAcute(ledger);

    public Passage Passage()
    {
        Items<Step> height = IsAcute && count.Foot is null ? count.Height(null) : [];
        ClaimId id = ledger.NextStep();
        Items<Case> cases = [.. (IsAcute ? Acute : Large).Select((rule, i) => Supposing(id, (i + 1).ToString(System.Globalization.CultureInfo.InvariantCulture), Instance(rule)))];
        Symbol[] limits = IsAcute ? [given.Angle, given.Beside, new Length(given.Top, count.Foot!)] : [given.Angle, given.Beside];
        Role[] roles = [new("angle", new Amount(given.Angle), IsCondition: false), new("other", new Amount(given.Beside), IsCondition: false), new("side", new Amount(given.Opposite), IsCondition: false)];
        RuleUse why = new(new("number-by-length"), [.. roles], [.. limits.Select(ledger.ClaimOf)]);
        Split split = new(id, new AnyOf([.. cases.Select(c => c.Assume)]), why, cases) { Title = TopicPhrases.ShorterOrLonger(given.Opposite) };
        return new(PassageUse.WhenItChanges, [.. height, split]);
    }

    private Instance Instance(string rule) => Instances.Of(book.Find(new RuleId(rule))!, ledger.Facts, ledger.Arrangement)
        .First(i => i.Names.Of(new Point("A")) == given.Start && i.Names.Of(new Point("B")) == given.Moving && i.Names.Of(new Point("C")) == given.Top);

    private Case Supposing(ClaimId split, string name, Instance instance)
    {
        Compare[] supposed = [.. instance.When.OfType<Compare>().Where(c => c.Terms.Any(t => t == given.Opposite || ledger.Arrangement.Canonical(t) == given.Opposite)).Select(ledger.Spelled)];
        Statement assume = supposed is [var only] ? only : new All([.. supposed]);
        bool holds = supposed.All(ledger.Holds);
        Ledger inside = ledger.Without(given.Opposite).ForCase(split, name);
        inside.Learn(assume, Case.Supposed(split, name));
        foreach (Compare part in supposed) inside.Learn(part, Case.Supposed(split, name));
        Deduction counted = new Deduce(book, inside).By(instance)!;
        return new(name, assume, [counted with { Remarks = Remarks((HowMany)counted.Says, instance) }], holds ? CaseEnd.Holds : CaseEnd.NotThisProblem);
    }

    private Items<Remark> Remarks(HowMany many, Instance instance) => many.Count == 0 && IsAcute ? [new(TopicPhrases.DoesNotReach(given.Opposite, given.Line), null)]
        : instance.Schema.Rule.Id.Name == "one-triangle-that-just-reaches" ? [new(TopicPhrases.WithARightAngle(given.Moving), new Place(PlaceKind.RightAngle, [new Corner(given.Start, given.Moving, given.Top)]))]
        : [];
}
