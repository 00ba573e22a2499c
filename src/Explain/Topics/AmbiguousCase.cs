namespace Explain;

/// <summary>Counts the triangles where the given angle is not between the two given sides.</summary>
internal sealed class AmbiguousCase(RuleBook book, Ledger ledger, Polygon triangle)
{
    /// <summary>The passage that counts; null where the data are of another kind or no triangle fits.</summary>
    public Passage? Count() => SwingingSide.Of(triangle, ledger) is { } swinging && Steps(swinging) is { } steps ? new Passage(PassageUse.Existence, steps) : null;

    private Items<Step>? Steps(SwingingSide given)
    {
        Point a = given.Angle.Vertex, c = Other(given.Beside, a), b = Other(given.Opposite, c);
        Deduce deduce = new(book, ledger);
        (string, Point)[] names = [("A", a), ("B", b), ("C", c)];
        if (ledger.Compare(given.Opposite, given.Beside) >= 0 || !given.IsAcute(ledger))
        {
            return (deduce.By("one-triangle-with-the-longer-side-opposite", names) ?? deduce.By("one-triangle-with-a-large-angle", names)) is { } one ? [one] : null;
        }

        if (!given.Reaches(ledger)) return null;
        Instruction foot = deduce.Foot(c, new Line(a, b), TopicPhrases.CompareWithTheHeight((Length)ledger.Arrangement.Canonical(given.Opposite), c, new Line(a, b)));
        Point f = (Point)foot.Makes[0];
        ledger.LearnRay(a, b, f);
        ledger.Spell([new Length(c, f)]);
        Items<CostedRule> rules = [new(RightAngleRules.Book.SineRatio, 1)];
        if (new Working(book, rules).Reach(ledger, [new Length(c, f)]) is not { } reached) return null;
        Deduction? count = deduce.By("two-triangles", [.. names, ("F", f)]) ?? deduce.By("one-triangle-that-just-reaches", [.. names, ("F", f)]);
        return count is null ? null : [foot, .. reached.Steps, count];
    }

    private static Point Other(Length side, Point end) => side.From == end ? side.To : side.From;
}
