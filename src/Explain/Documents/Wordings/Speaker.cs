namespace Explain;

/// <summary>Says phrases, statements, reasons and names in one English, as runs that any output can print.</summary>
internal sealed class Speaker
{
    private readonly WordingTable table;
    private readonly IClaims claims;
    private readonly Story story;

    public Speaker(WordingTable table, MathStyle style, IClaims claims, Story story)
    {
        this.table = table;
        this.claims = claims;
        this.story = story;
        Style = style;
        Math = new MathBuilder(style, claims);
    }

    public MathStyle Style { get; }

    public MathBuilder Math { get; }

    public bool Has(string id) => table.Find(id) is not null;

    /// <summary>A phrase in words; <paramref name="runs"/> stand in place of arguments of these names.</summary>
    /// <exception cref="WordingException">It has no words, or they place what is not there.</exception>
    public Items<Inline> Say(Phrase phrase, params (string Name, Items<Inline> Runs)[] runs) => Expand(phrase.Id.Name,
        (name, how) => runs.FirstOrDefault(r => r.Name == name).Runs is { Count: > 0 } given ? given : Say(Argument(phrase, name), how),
        name => Count(Argument(phrase, name)));

    /// <summary>The reason of a step: the words of its rule, or the shorter ones for its second use.</summary>
    public Items<Inline> Reason(RuleUse why, bool again)
    {
        string id = again && Has(why.Rule.Name + ".again") ? why.Rule.Name + ".again" : why.Rule.Name;
        return Say(new Phrase(new(id), [.. why.Roles.Select(Argument), new StepArg("steps", why.From)]));
    }

    public Items<Inline> Say(Statement statement) => statement switch
    {
        Compare c => [new MathRun(Math.Compare(c))],
        All all => And([.. all.Of.Select(Say)]),
        AnyOf any => Or([.. any.Of.Select(Say)]),
        HowMany many => Say(StatementWords.HowMany(many.Count, many.What), ("number", Number(many.Count))),
        Varies { Increases: true } v => Say(StatementWords.Increases(v.What, v.With)),
        Varies v => Say(StatementWords.Decreases(v.What, v.With)),
        Taken taken => Say(taken.Words),
        MostOf most => Say(StatementWords.MostOf(most.What, most.With)),
        _ => [.. StatementGrammar.Pieces(statement, Style.English).SelectMany(p => Piece(p))],
    };

    /// <summary>A count without "there is": two triangles.</summary>
    public Items<Inline> AsMany(HowMany many) => Say(StatementWords.AsMany(many.Count, many.What), ("number", Number(many.Count)));

    /// <summary>An object of the figure by its name: A, AB, angle ABC or ∠ABC.</summary>
    public Items<Inline> Say(Named named) => named switch
    {
        Corner c when Style.English == English.UnitedStates => [new MathRun(new MathRow([new MathMark("∠"), Letters(c)], MathLevel.Atom))],
        Corner c => [new WordRun("angle "), new MathRun(Letters(c))],
        _ => [new MathRun(new MathName(NameText.Write(named, Style.English)))],
    };

    /// <summary>A formula; a quantity by its name, an angle as angle ABC or m∠ABC.</summary>
    public Items<Inline> Say(Expr formula) => formula switch
    {
        SymbolUse { Symbol: Angle { Reflex: false } a } when Style.English == English.UnitedKingdom => Say(new Corner(a.First, a.Vertex, a.Second)),
        SymbolUse { Symbol: DistanceToLine or Bearing or Measure or CircleMeasure } use => OutOfRow(Math.Symbol(use.Symbol)),
        _ => [new MathRun(Math.Term(formula))],
    };

    public Items<Inline> And(Items<Items<Inline>> items) => List(items, ListWords.TwoAnd(), ListWords.LastAnd());

    public Items<Inline> Or(Items<Items<Inline>> items) => List(items, ListWords.TwoOr(), ListWords.LastOr());

    /// <summary>Items with commas, or with semicolons where an item has commas itself.</summary>
    public static Items<Inline> Separate(Items<Items<Inline>> items)
    {
        string comma = items.Any(i => i.OfType<WordRun>().Any(w => w.Text.Contains(',', StringComparison.Ordinal))) ? "; " : ", ";
        return [.. items.SelectMany((item, i) => i == 0 ? item : (IEnumerable<Inline>)[new WordRun(comma), .. item])];
    }

    /// <summary>A count in words where it has a word, otherwise in digits.</summary>
    public Items<Inline> Number(int count) => NumberWords.For(count) is { } word ? Say(word) : Say(new CountArg("", count));

    private Items<Inline> Expand(string id, Func<string, string?, Items<Inline>> place, Func<string, int> count)
    {
        if (table.Find(id) is not { } pieces) throw new WordingException(id, null);
        List<Inline> runs = [];
        bool closing = false;
        foreach (WordingPiece piece in pieces)
        {
            if (piece is WordingWords words)
            {
                runs.Add(new WordRun(closing && words.Text.IndexOf(')', StringComparison.Ordinal) is >= 0 and var end ? words.Text[(end + 1)..] : words.Text, id));
                closing = false;
            }
            else if (piece is WordingChoice choice) runs.Add(new WordRun(count(choice.Name) == 1 ? choice.One : choice.Other, id));
            else if (place(piece.Places!, (piece as WordingSlot)?.How) is { Count: > 0 } placed) runs.AddRange(placed);
            else closing = Open(runs);
        }

        return [.. runs.Where(r => r is not WordRun { Text.Length: 0 })];
    }

    /// <summary>Takes back an open bracket, and all in it, when what it was opened for is nothing.</summary>
    private static bool Open(List<Inline> runs)
    {
        if (runs is not [.., WordRun last] || last.Text.LastIndexOf(" (", StringComparison.Ordinal) is not (>= 0 and var open) || last.Text.IndexOf(')', open) >= 0) return false;
        runs[^1] = last with { Text = last.Text[..open] };
        return true;
    }

    private static Arg Argument(Phrase phrase, string name) =>
        phrase.Args.FirstOrDefault(a => a.Name == name) ?? throw new WordingException(phrase.Id.Name, name);

    private Arg Argument(Role role) => role.Is switch
    {
        Objects { Are: [var one] } => new NamedArg(role.Name, one),
        Objects several => new ListArg(role.Name, [.. several.Are.Select(a => new NamedArg(role.Name, a))]),
        Amount { Is: Angle { Reflex: false } a } => new NamedArg(role.Name, new Corner(a.First, a.Vertex, a.Second)),
        Amount amount => new FormulaArg(role.Name, amount.Is),
        Links links => new PhraseArg(role.Name, LinkWords.Of(links.Are)),
        Holding holding when claims.Find(holding.Claim) is { } claim => new StatementArg(role.Name, claim.Says),
        Holding holding => new StepArg(role.Name, [holding.Claim]),
        _ => throw new ArgumentException(role.Is.GetType().Name, nameof(role)),
    };

    /// <summary>An object by what the story calls it, or the first or second place of a point.</summary>
    private Items<Inline> Say(Arg arg, string? how) => (how, arg) switch
    {
        (WordingSlot.First, NamedArg { Is: Point p }) => [new MathRun(new MathName(p.Name + "₁"))],
        (WordingSlot.Second, NamedArg { Is: Point p }) => [new MathRun(new MathName(p.Name + "₂"))],
        (WordingSlot.Thing, NamedArg { Is: Line l }) when story.Thing(l.From, l.To) is { } thing => [new UserRun(thing, IsPhrase: true)],
        (WordingSlot.Thing, FormulaArg { Is: SymbolUse { Symbol: Length l } }) when story.Thing(l.From, l.To) is { } thing => [new UserRun(thing, IsPhrase: true)],
        (WordingSlot.Line, NamedArg { Is: Line l }) => story.Line(l) is { } named ? [new UserRun(named, IsPhrase: true)] : Say(StatementWords.Line(l)),
        _ => Say(arg),
    };

    private Items<Inline> Say(Arg arg) => arg switch
    {
        NamedArg n => Say(n.Is),
        StatementArg s => Say(s.Is),
        FormulaArg f => Say(f.Is),
        ValueArg v => [new MathRun(Math.Value(v.Is))],
        StepArg s => Steps(s.Are),
        CountArg c => [new CountRun(c.Is)],
        PhraseArg p => Say(p.Is),
        TextArg t => [new UserRun(t.Is)],
        ListArg l => And([.. l.Are.Select(Say)]),
        _ => throw new ArgumentException(arg.GetType().Name, nameof(arg)),
    };

    private int Count(Arg arg) => arg switch
    {
        CountArg c => c.Is,
        ListArg l => l.Are.Count,
        StepArg s => Numbers(s.Are).Count,
        _ => throw new ArgumentException(arg.Name, nameof(arg)),
    };

    /// <summary>Step 3, steps 1 and 2; nothing where the page numbers none of them.</summary>
    private Items<Inline> Steps(Items<ClaimId> ids)
    {
        Items<string> numbers = Numbers(ids);
        return numbers.Count == 0 ? [] : Say(StepWords.Steps(numbers.Count, numbers), ("numbers", And([.. numbers.Select(n => (Items<Inline>)[new StepRun(n)])])));
    }

    private Items<string> Numbers(Items<ClaimId> ids) => [.. ids.Select(claims.NumberOf).OfType<string>().Distinct(StringComparer.Ordinal)];

    private Items<Inline> List(Items<Items<Inline>> items, Phrase two, Phrase last) => items.Count < 2 ? items.Count == 0 ? [] : items[0]
        : [.. Separate([.. items.Take(items.Count - 1)]), .. Say(items.Count == 2 ? two : last), .. items[items.Count - 1]];

    private Items<Inline> Piece(StatementPiece piece) => piece switch
    {
        { Formula: { } formula } => [new MathRun(Math.Term(formula))],
        { Named: Point or Line or Polygon or Circle } => [new MathRun(new MathName(piece.Words))],
        { Named: Corner c } => Say(c),
        _ => [new WordRun(piece.Words)],
    };

    private static MathName Letters(Corner corner) => new(corner.First.Name + corner.Vertex.Name + corner.Second.Name);

    private static Items<Inline> OutOfRow(MathPiece piece) => piece is MathRow row
        ? [.. row.Of.Select(p => p is MathWords w ? (Inline)new WordRun(w.Text) : new MathRun(p))]
        : [new MathRun(piece)];
}
