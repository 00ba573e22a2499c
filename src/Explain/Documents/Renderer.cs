namespace Explain;

/// <summary>Prints problems and solutions in one English. Immutable; safe to share between threads.</summary>
public sealed class Renderer
{
    private readonly WordingTable table;
    private readonly Speaker speaker;

    /// <summary>A renderer for an English, all else by default.</summary>
    /// <param name="english">The English.</param>
    public Renderer(English english)
        : this(new RendererOptions { English = english })
    {
    }

    /// <summary>A renderer with the options given.</summary>
    /// <param name="options">The options.</param>
    /// <exception cref="WordingException">A wording of the options cannot be used.</exception>
    /// <exception cref="TemplateException">A template of the house cannot be used.</exception>
    public Renderer(RendererOptions? options = null)
    {
        Options = options ?? new RendererOptions();
        table = Options.House.Words(Own(WordingTable.For(Options.English), [.. Options.Wording.SelectMany(House.Lines)]), Options.English);
        speaker = new Speaker(table, Style(RoundingKept.Figures([])), NoClaims.All, Story.None);
    }

    /// <summary>The options.</summary>
    public RendererOptions Options { get; }

    /// <summary>Prints a form of a solution.</summary>
    /// <param name="solution">The solution.</param>
    /// <param name="form">What is printed.</param>
    /// <param name="output">The notation.</param>
    /// <exception cref="TemplateException">A template of the house fails.</exception>
    /// <exception cref="PrintAuditException">The page would hold a number, a name, a reason or a text that is not in the solution.</exception>
    public string Render(Solution solution, Form form, Output output)
    {
        if (form == Form.Question) return Render(solution.Of, output);
        Page page = PageOf(solution);
        return Print(form == Form.Answer ? AnswerForm.Blocks(page) : WorkedSolutionForm.Blocks(page), solution.Of, output, new EvidenceBook(page));
    }

    /// <summary>Prints the question of a problem.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="output">The notation.</param>
    /// <exception cref="TemplateException">A template of the house fails.</exception>
    /// <exception cref="PrintAuditException">The page would hold a number, a name or a text that is not in the problem.</exception>
    public string Render(Problem problem, Output output) => Print(new OpeningBlocks(problem, speaker).Question("question"), problem, output, new EvidenceBook(problem));

    /// <summary>What is wrong and what to do, in plain text.</summary>
    /// <param name="error">The error.</param>
    public string Say(ProblemError error) => Plain(Sentence.Join(Sentence.Of(speaker.Say(error.Message)), error.Remedy is { } remedy ? Sentence.Of(speaker.Say(remedy)) : []));

    /// <summary>A phrase in plain text, without capital and full stop.</summary>
    /// <param name="phrase">The phrase.</param>
    public string Say(Phrase phrase) => Plain(speaker.Say(phrase));

    /// <summary>The value of an answer, rounded, with its unit: 137 m. Empty where it is no number.</summary>
    /// <param name="value">The value.</param>
    public string Say(AnswerValue value) => Say(value, of: null);

    private string Say(AnswerValue value, Symbol? of) => value.Value is { } number ? MathPlain.Write(new AnswerText(speaker, NoClaims.All).Alone(number, value, of)) : "";

    /// <summary>The values of an answer, one for each case and item: 2.90 m or 1.04 m.</summary>
    /// <param name="answer">The answer.</param>
    public string Say(Answer answer) => Plain(speaker.Or([.. answer.Values.Select(v => (Items<Inline>)[new WordRun(Say(v, answer.For.Wanted))])]));

    /// <summary>Bounds, rounded outwards: 133.2 m to 141.0 m.</summary>
    /// <param name="bounds">The bounds.</param>
    public string Say(Bounds bounds)
    {
        (Items<Inline> lower, Items<Inline> upper) = new AnswerText(speaker, NoClaims.All).Ends(bounds, new(null, null, default, bounds.Lower, null, bounds));
        return Plain(speaker.Say(AnswerWords.Range("", ""), ("lower", lower), ("upper", upper)));
    }

    /// <summary>A calculation in one line: target = formula = substitution = value.</summary>
    /// <param name="calculation">The calculation.</param>
    /// <param name="of">The solution that it belongs to, from which its values come.</param>
    public string Say(Calculation calculation, Solution of)
    {
        Page page = PageOf(of);
        return MathPlain.Write(new CalculationLines(page).Chain(calculation));
    }

    /// <summary>A reason in plain text, without capital and full stop: the words of its rule with what fills its roles.</summary>
    /// <param name="why">The reason.</param>
    /// <param name="of">The solution that it belongs to.</param>
    public string Say(RuleUse why, Solution of) => Plain(PageOf(of).Speaker.Reason(why, again: false));

    /// <summary>A statement in plain text.</summary>
    /// <param name="statement">The statement.</param>
    /// <param name="of">The solution that it belongs to, from which its values come.</param>
    public string Say(Statement statement, Solution of) => Plain(PageOf(of).Speaker.Say(statement));

    /// <summary>The ends of an answer's bounds, each rounded outwards as the answer is rounded.</summary>
    internal (string Lower, string Upper) Ends(AnswerValue value)
    {
        (Items<Inline> lower, Items<Inline> upper) = new AnswerText(speaker, NoClaims.All).Ends(value.Bounds!, value);
        return (Plain(lower), Plain(upper));
    }

    /// <summary>The words with those of the user's own rules and phrases; one that the library words as well is held against its words.</summary>
    private static WordingTable Own(WordingTable library, Items<WordingLine> lines)
    {
        foreach (WordingLine line in lines)
            if (library.Find(line.Id) is { } standard) HouseWords.Check(line, standard);
        return library.With(lines);
    }

    private Page PageOf(Solution solution) => new(solution, table, Style(RoundingKept.Figures(solution.Parts.SelectMany(p => p.Answers))), Options.Detail);

    private MathStyle Style(int figures) => new(Options.English, Options.Numbers == DecimalSign.Comma, figures);

    private string Print(IEnumerable<Block> blocks, Problem problem, Output output, EvidenceBook evidence) =>
        Print(new Document([.. blocks], FigurePoints.Of(problem)), output, evidence);

    /// <summary>Prints a document, and holds it and the finished page against what it may show.</summary>
    internal string Print(Document document, Output output, EvidenceBook evidence)
    {
        Refuse(new DocumentAudit(evidence, table).Of(document));
        InlineWriter writer = output == Output.Latex ? new LatexWriter(document.Points) : new MarkdownWriter();
        Marks marks = new();
        string page = Options.House.Templates(writer.Folder).Print(document, writer, marks);
        Refuse(TextAudit.Of(page, marks, writer));
        return Marks.Strip(page);
    }

    private static void Refuse(IEnumerable<Finding> findings)
    {
        if (findings.Distinct().ToArray() is { Length: > 0 } strangers) throw new PrintAuditException([.. strangers]);
    }

    private static string Plain(Items<Inline> runs) => PlainWriter.Text.Write(runs);
}
