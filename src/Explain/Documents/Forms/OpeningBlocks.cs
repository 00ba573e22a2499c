namespace Explain;

/// <summary>The head of a page: question, figure in words, givens, what to find, assumptions, cautions, plan.</summary>
internal sealed class OpeningBlocks(Problem problem, Speaker speaker)
{
    private const string LabelRoot = "explain:";

    /// <summary>The title and the question, as typed or, where nothing was typed, from the data.</summary>
    public IEnumerable<Block> Question(string label) =>
    [
        new HeadingBlock(1, Title, Label(problem, label)),
        .. Paragraphs(),
        .. problem.Find.Select(g => g.Letter).OfType<string>().Distinct().Select(Part),
        .. Figure(),
    ];

    public IEnumerable<Block> Given()
    {
        Items<Items<Inline>> facts = [.. Facts.Select(speaker.Say), .. problem.Given.Select(g => (Items<Inline>)[new MathRun(Measured(g))])];
        if (facts.Count > 0) yield return new ParagraphBlock(Lead(PageWords.Given()), Sentence.Of(Speaker.Separate(facts)));
        if (problem.Find.All(g => g.Letter is null) && problem.Find.Count > 0)
            yield return new ParagraphBlock(Lead(PageWords.ToFind()), Sentence.Of(speaker.And([.. problem.Find.Select(g => GoalText.Of(g, speaker))])));
    }

    public IEnumerable<Block> Assumptions(Items<Premise> premises)
    {
        Items<Items<Inline>> assumed = [.. premises.Where(p => p.Source == Source.Assumed).Select(p => speaker.Say(p.Says))];
        Items<Items<Inline>> all = [.. assumed, .. problem.Assume.Select(a => (Items<Inline>)[new UserRun(a)]).Where(a => !assumed.Contains(a))];
        if (all.Count > 0) yield return new ParagraphBlock(Lead(PageWords.Assumptions(all.Count)), Sentence.Of(SentenceCase(speaker.And(all))));
    }

    public IEnumerable<Block> Cautions(Items<Phrase> cautions)
    {
        if (cautions.Count > 0) yield return new CautionBlock(Lead(PageWords.Caution()), Sentence.Join(cautions.Select(c => Sentence.Of(speaker.Say(c)))));
    }

    public IEnumerable<Block> Plan(Items<Part> parts)
    {
        Remark[] plan = [.. parts.SelectMany(p => p.Passages).Where(p => p.Use == PassageUse.Plan).SelectMany(p => p.Remarks)];
        if (plan.Length > 0) yield return new ParagraphBlock(Lead(PageWords.Plan()), Sentence.Join(plan.Select(r => Sentence.Of(speaker.Say(r.Says)))));
    }

    /// <summary>The label of a place in a problem's page; null where the problem has no file to name it by.</summary>
    public static string? Label(Problem problem, string place) => problem.File is not { } file ? null
        : LabelRoot + string.Concat(Path.GetFileNameWithoutExtension(file).Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-')) + ":" + place;

    private Items<Inline> Title => problem.Title is { } title ? [new UserRun(title)]
        : problem.Topic is { } topic ? Sentence.Capital([new WordRun(topic.Name)]) : Sentence.Capital(speaker.Say(PageWords.Question()));

    /// <summary>What the figure states as an equality or a direction, and so is given like a measurement.</summary>
    private IEnumerable<Statement> Facts => problem.Figure.Select(f => f.Says).Where(IsFact);

    private static bool IsFact(Statement statement) => statement is Compare or Place { Kind: PlaceKind.Parallel or PlaceKind.Perpendicular };

    private IEnumerable<Block> Paragraphs()
    {
        Items<Inline>[] paragraphs = problem.Question is { } question
            ? [.. question.Split("\n\n", StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(p => (Items<Inline>)[new UserRun(Single(p))])]
            : [Written()];
        return paragraphs.Select((p, i) => new ParagraphBlock(i == 0 ? Lead(PageWords.Question()) : [], p));
    }

    private Items<Inline> Written() => Sentence.Join(
    [
        .. problem.Figure.Select(f => Sentence.Of(speaker.Say(f.Says))),
        Sentence.Of(speaker.And([.. problem.Given.Select(g => (Items<Inline>)[new MathRun(WithMargin(g))])])),
        problem.Find.Any(g => g.Letter is not null) ? [] : GoalText.Instruction(problem.Find, speaker),
    ]);

    private ParagraphBlock Part(string letter) => new([], [.. speaker.Say(PageWords.Letter(letter)), new WordRun(" "),
        .. problem.Parts.FirstOrDefault(p => p.Letter == letter) is { } own ? [new UserRun(Single(own.Words))] : GoalText.Instruction([.. problem.Find.Where(g => g.Letter == letter)], speaker)]);

    /// <summary>The figure where it is more than a triangle, and what the story calls its parts.</summary>
    private IEnumerable<Block> Figure()
    {
        Statement[] said = [.. problem.Figure.Select(f => f.Says).Where(s => !IsFact(s))];
        if (said.All(s => s is Place { Kind: PlaceKind.Triangle })) yield break;
        Items<Inline> names = Sentence.Of(speaker.And([.. problem.Names.Select(n => speaker.Say(PageWords.Name("", n.Is), ("of", [new MathRun(new MathName(n.Of))])))]));
        yield return new FigureBlock(Lead(PageWords.Figure()), Sentence.Join([.. said.Select(s => Sentence.Of(speaker.Say(s))), names]));
    }

    /// <summary>BC = 6 cm ± 0.1 cm.</summary>
    private MathRow WithMargin(Given given) => Measured(given) is var row && given.Within is { } within ? row with { Of = [.. row.Of, new MathSign("±"), speaker.Math.Term(within)] } : row;

    private MathRow Measured(Given given) => new([speaker.Math.Symbol(given.Of), MathBuilder.Sign(Relation.Equal), MathReader.Read(given.Typed)], MathLevel.Relation);

    private Items<Inline> Lead(Phrase phrase) => Sentence.Of(speaker.Say(phrase));

    private static string Single(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    /// <summary>The user's assumption as the beginning of a sentence, unless it begins with a letter of mathematics.</summary>
    private static Items<Inline> SentenceCase(Items<Inline> runs) => runs is [UserRun { Text: [>= 'a' and <= 'z', >= 'a' and <= 'z', ..] } first, ..]
        ? [new UserRun(char.ToUpperInvariant(first.Text[0]) + first.Text[1..]), .. runs.Skip(1)] : runs;
}
