namespace Explain;

/// <summary>Counts the triangles where the given angle is not between the two given sides.</summary>
internal sealed class AmbiguousCase(RuleBook book, Ledger ledger, Polygon triangle)
{
    /// <summary>The passage that counts; null where the data are of another kind or no triangle fits.</summary>
    public Passage? Count()
    {
        Symbol[] angles = [.. TriangleParts.Angles(triangle).Where(ledger.Knows)];
        Length[] sides = [.. TriangleParts.Sides(triangle).Where(ledger.Knows)];
        if (angles is not [Angle known] || sides.Length != 2) return null;
        Point a = known.Vertex;
        if (sides.FirstOrDefault(s => s.From != a && s.To != a) is not { } opposite) return null;
        Length beside = sides.First(s => s != opposite);
        Point c = beside.From == a ? beside.To : beside.From, b = opposite.From == c ? opposite.To : opposite.From;
        return Steps(a, b, c, opposite, beside) is { } steps ? new Passage(PassageUse.Existence, steps) : null;
    }

    private Items<Step>? Steps(Point a, Point b, Point c, Length opposite, Length beside)
    {
        Deduce deduce = new(book, ledger);
        (string, Point)[] names = [("A", a), ("B", b), ("C", c)];
        if (ledger.Compare(opposite, beside) >= 0 || ledger.Compare(new SymbolUse(new Angle(b, a, c)), Expr.Degrees(90)) >= 0)
        {
            return (deduce.By("one-triangle-with-the-longer-side-opposite", names) ?? deduce.By("one-triangle-with-a-large-angle", names)) is { } one ? [one] : null;
        }

        Expr height = new Product(beside, new Apply(Function.Sine, new SymbolUse(new Angle(b, a, c))));
        if (ledger.Compare(height, opposite) > 0) return null;
        Instruction foot = deduce.Foot(c, new Line(a, b), TopicPhrases.CompareWithTheHeight((Length)ledger.Arrangement.Canonical(opposite), c, new Line(a, b)));
        Point f = (Point)foot.Makes[0];
        ledger.LearnRay(a, b, f);
        ledger.Spell([new Length(c, f)]);
        Items<CostedRule> rules = [new(RightAngleRules.Book.SineRatio, 1)];
        if (new Working(book, rules).Reach(ledger, [new Length(c, f)]) is not { } reached) return null;
        Deduction? count = deduce.By("two-triangles", [.. names, ("F", f)]) ?? deduce.By("one-triangle-that-just-reaches", [.. names, ("F", f)]);
        return count is null ? null : [foot, .. reached.Steps, count];
    }
}
