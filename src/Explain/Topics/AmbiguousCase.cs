namespace Explain;

/// <summary>Counts the triangles where the given angle is not between the two given sides.</summary>
internal sealed class AmbiguousCase(RuleBook book, Ledger ledger, SwingingSide given)
{
    private static readonly Items<CostedRule> HeightRules = [new(RightAngleRules.Book.SineRatio, 1)];

    private readonly Deduce deduce = new(book, ledger);

    /// <summary>The foot of the height, once it is drawn; null where the count needs no height.</summary>
    public Point? Foot { get; private set; }

    private (string Pattern, Point Is)[] Names => [("A", given.Start), ("B", given.Moving), ("C", given.Top), .. Foot is null ? [] : new[] { ("F", Foot) }];

    /// <summary>The passage that counts; null where no triangle fits.</summary>
    public Passage? Count()
    {
        Step[]? steps = given.NeedsHeight(ledger) ? [.. Height(TopicPhrases.CompareWithTheHeight(given.Opposite, given.Top, given.Line)), .. AgainstTheHeight()] : WithoutHeight();
        return steps is [.., Deduction { Says: HowMany }] ? new Passage(PassageUse.Existence, [.. steps]) : null;
    }

    /// <summary>The steps that draw the height and find it.</summary>
    public Items<Step> Height(Phrase? title)
    {
        Instruction foot = deduce.Foot(given.Top, given.Line, title);
        Foot = (Point)foot.Makes[0];
        ledger.LearnRay(given.Start, given.Moving, Foot);
        ledger.Spell([new Length(given.Top, Foot), new Length(given.Start, Foot)]);
        return [foot, .. new Working(book, HeightRules).Reach(ledger, [new Length(given.Top, Foot)])!.Steps];
    }

    private IEnumerable<Step> AgainstTheHeight()
    {
        Expr height = new Length(given.Top, Foot!);
        if (deduce.Compared([height, given.Opposite, given.Beside], [Relation.Less, Relation.Less]) is { } between) yield return between;
        if ((deduce.By("two-triangles", Names) ?? deduce.By("one-triangle-that-just-reaches", Names)) is { } count) yield return count;
    }

    private Step[] WithoutHeight()
    {
        Relation relation = ledger.Compare(given.Opposite, given.Beside) == 0 ? Relation.Equal : Relation.Greater;
        Deduction? compared = deduce.Compared([given.Opposite, given.Beside], [relation]);
        Deduction? count = deduce.By("one-triangle-with-the-longer-side-opposite", Names) ?? deduce.By("one-triangle-with-a-large-angle", Names);
        return compared is null || count is null ? [] : [compared with { Title = TopicPhrases.CompareSides(given.Opposite, given.Beside) }, count];
    }
}
