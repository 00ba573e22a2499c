namespace Explain;

/// <summary>The answer of a part as a block: one line, or a list where there are several cases.</summary>
internal sealed class AnswerBlocks(Page page)
{
    /// <summary>Words between two values that keep them together: and, with.</summary>
    private const int LongestBetween = 7;

    private readonly AnswerText text = new(page.Speaker, page.Claims);

    /// <summary>The block of a part's answers and the step that it follows; no step where it rests on none of the part's own.</summary>
    public (ClaimId? After, AnswerBlock? Block) Of(Part part)
    {
        if (part.Answers.Count == 0) return (null, null);
        ClaimId[] order = [.. page.Sections.Where(s => s.Part == part && PageOrder.IsOfPart(s.Kind)).SelectMany(s => s.Passage.Steps).SelectMany(Solution.Within).Select(s => s.Id)];
        int last = part.Answers.SelectMany(a => a.Values).Select(v => Array.IndexOf(order, v.From)).DefaultIfEmpty(-1).Max();
        return (last < 0 ? null : order[last], Block(part));
    }

    public AnswerBlock Block(Part part)
    {
        Items<Inline> lead = page.Sentence(part.Letter is { } letter ? AnswerWords.LeadLetter(letter) : AnswerWords.Lead());
        string[] cases = [.. Values(part).Select(v => v.Value.Case).OfType<string>().Distinct()];
        Items<Inline> note = RoundingNote.Of(Values(part).Where(v => v.Value.Bounds is null || v.Answer.For.Kind != GoalKind.Bounds).Select(v => v.Value), page.Speaker);
        Items<Items<Inline>> counts = [.. Counts(part)];
        if (cases.Length < 2) return new(lead, Sentence.Join([.. counts, Sentence.Of([.. One(part), .. Spaced(note)]), .. Names(part)]), [], []);
        Items<Inline> opening = Sentence.Of(part.Several is { } several ? page.Speaker.Say(several) : page.Speaker.Say(AnswerWords.Cases(cases.Length), ("n", page.Speaker.Number(cases.Length))));
        return new(lead, Sentence.Join([.. counts, opening]), [.. cases.Select((c, i) => Entry(part, c, i == cases.Length - 1))], OfItsOwn(note));
    }

    /// <summary>The values of quantities.</summary>
    private static IEnumerable<(Answer Answer, AnswerValue Value)> Values(Part part) =>
        part.Answers.Where(a => a.For.Kind != GoalKind.Count).SelectMany(a => a.Values.Select(v => (a, v)));

    /// <summary>There are two triangles.</summary>
    private IEnumerable<Items<Inline>> Counts(Part part) =>
        part.Answers.Where(a => a.For.Kind == GoalKind.Count).SelectMany(a => a.Values.Select(v => Sentence.Of(text.Equation(a, v))));

    private Items<Inline> Entry(Part part, string name, bool isLast)
    {
        Items<Items<Inline>> equations = [.. Values(part).Where(v => v.Value.Case is null || v.Value.Case == name).Select(v => IsBounds(v) ? Bounds(v.Answer, v.Value) : text.Equation(v.Answer, v.Value))];
        Items<Inline> joined = equations.Count < 2 ? equations[0] : !equations.All(e => e is [Strong]) ? page.Speaker.And(equations)
            : page.Speaker.Say(AnswerWords.With("", ""), ("first", equations[0]), ("second", page.Speaker.And([.. equations.Skip(1)])));
        return [.. Whole(joined), new WordRun(isLast ? "." : ";")];
    }

    private Items<Inline> One(Part part)
    {
        Items<Items<Inline>> said = [.. Values(part).Where(v => !IsBounds(v)).Select(v => text.Equation(v.Answer, v.Value))];
        Items<Items<Inline>> bounds = [.. Values(part).Where(IsBounds).Select(v => Bounds(v.Answer, v.Value))];
        return said.Count == 0 ? page.Speaker.And(bounds) : [.. Whole(page.Speaker.And(said)), .. bounds.SelectMany(b => (IEnumerable<Inline>)[new WordRun("; "), .. b])];
    }

    /// <summary>Runs that stand out one beside the other as one, with the words between them.</summary>
    private static Items<Inline> Whole(Items<Inline> runs) => runs.All(r => r is Strong or WordRun { Text.Length: < LongestBetween }) && runs.Count > 0
        ? [new Strong([.. runs.SelectMany(r => r is Strong s ? s.Runs : [r])])] : runs;

    private static bool IsBounds((Answer Answer, AnswerValue Value) of) => of.Answer.For.Kind == GoalKind.Bounds && of.Value.Bounds is not null;

    private Items<Inline> Bounds(Answer answer, AnswerValue value)
    {
        Items<Inline> between = page.Speaker.Say(AnswerWords.Between("", ""), ("what", Quantity(answer, value)), ("bounds", [new Strong(Range(answer, value))]));
        return [.. between, new WordRun(" ("), .. page.Speaker.Say(RoundingWords.Outwards()), new WordRun(")"), .. Within(value)];
    }

    /// <summary>So AB is between 57.4 m and 58.7 m: where the page says how accurate an answer is and nobody asked.</summary>
    public IEnumerable<Items<Inline>> Accuracy(Part part) => Values(part).Where(v => v.Value.Bounds is not null && !IsBounds(v)).Select(v => Sentence.Of(
        [.. page.Speaker.Say(AnswerWords.SoBetween("", ""), ("what", Quantity(v.Answer, v.Value)), ("bounds", Range(v.Answer, v.Value))),
        new WordRun(" ("), .. page.Speaker.Say(RoundingWords.Outwards()), new WordRun(")"), .. Within(v.Value)]));

    private Items<Inline> Quantity(Answer answer, AnswerValue value) => text.QuantityOf(answer, value) is { } symbol ? text.Quantity(symbol) : [new UserRun(answer.For.AsTyped)];

    private Items<Inline> Range(Answer answer, AnswerValue value)
    {
        (Items<Inline> lower, Items<Inline> upper) = text.Ends(value.Bounds!, value, answer.For.Wanted);
        return page.Speaker.Say(AnswerWords.Bounds("", ""), ("lower", lower), ("upper", upper));
    }

    /// <summary>: 137 m is right to within 4 m.</summary>
    private Items<Inline> Within(AnswerValue value)
    {
        if (value.Value is not { } number) return [];
        Rounding rule = AnswerText.RoundingOf(value, number);
        MathPiece margin = page.Speaker.Math.Number(Margin.Of(number, value.Bounds!, rule), rule.UnitFor(number.Unit));
        return [new WordRun(": "), .. page.Speaker.Say(AnswerWords.Within("", ""), ("answer", [new MathRun(text.Rounded(number, rule))]), ("margin", [new MathRun(margin)]))];
    }

    /// <summary>AB is the width of the ravine: what the story calls what was found.</summary>
    private IEnumerable<Items<Inline>> Names(Part part) => part.Answers
        .Where(a => a.For.Kind == GoalKind.Value)
        .SelectMany(a => page.Solution.Of.Names.Where(n => a.For.Wanted is Length l && n.Of is { Length: >= 2 } of && (of == l.From.Name + l.To.Name || of == l.To.Name + l.From.Name)))
        .Select(n => Sentence.Of(page.Speaker.Say(AnswerWords.Named("", n.Is), ("what", [new MathRun(new MathName(n.Of))]))));

    /// <summary>A note in brackets as a sentence of its own.</summary>
    private static Items<Inline> OfItsOwn(Items<Inline> note) => note.Count == 0 ? []
        : [note[0], .. Sentence.Of([.. note.Skip(1).Take(note.Count - 2)]), note[note.Count - 1]];

    private static Items<Inline> Spaced(Items<Inline> note) => note.Count == 0 ? [] : [new WordRun(" "), .. note];
}
