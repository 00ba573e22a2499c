namespace Explain;

/// <summary>Makes a problem of a map of keys and values, and lists everything that is wrong with it.</summary>
internal sealed class ProblemReader(ReadMap map, Problem start)
{
    private const int MostErrors = 20;
    private static readonly string[] Keys =
        ["topic", "figure", "given", "find", "title", "question", "parts", "names", "assume", "method", "scale", "tolerance", "accuracy", "round", "marks"];

    private readonly List<ProblemError> errors = [];

    public Problem Read()
    {
        foreach ((ReadText key, ReadNode _) in map.Entries.Where(e => !Keys.Contains(e.Key.Text)))
            Add(ErrorCodes.UnknownKey, key.At, ReadingPhrases.UnknownKey(key.Text), Nearest(key.Text));
        GivenReader given = new(errors);
        Items<FigureStatement> figure = [.. Texts("figure").Select(Statement).OfType<FigureStatement>()];
        HashSet<string> points = [.. figure.SelectMany(f => Mentions.Points(f.Says)).Select(p => p.Name)];
        Problem read = start with
        {
            Topic = Text("topic") is { } topic ? new TopicId(topic) : null,
            Title = Text("title"),
            Question = Text("question"),
            Figure = figure,
            Given = [.. Pairs("given").Select(p => given.Read(p.Key, p.Value, points)).OfType<Given>()],
            Find = [.. Goals().Select(g => Goal(g.Letter, g.Text, points)).OfType<Goal>()],
            Parts = [.. Pairs("parts").Select(p => new PartWording(p.Key.Text, p.Value.Text))],
            Names = [.. Pairs("names").Select(p => new NameInStory(p.Key.Text, p.Value.Text))],
            Assume = [.. Texts("assume").Select(t => t.Text)],
            Methods = [.. Texts("method").Select(t => t.Text)],
            Round = [.. Roundings()],
            LengthsWithin = Accuracy()?.Lengths,
            AnglesWithin = Accuracy()?.Angles,
            Marks = [.. Pairs("marks").Select(p => int.TryParse(p.Value.Text, System.Globalization.CultureInfo.InvariantCulture, out int marks) ? new PartMarks(p.Key.Text, marks) : null).OfType<PartMarks>()],
        };
        if (Node("find") is null && !map.Entries.Any(e => Nearest(e.Key.Text) is { } n && !Keys.Contains(e.Key.Text) && Close(e.Key.Text, "find")))
            Add(ErrorCodes.MissingKey, map.At, ReadingPhrases.MissingKey("find"), null);
        return read with { Errors = [.. errors.OrderBy(e => e.Lines[0]).Take(MostErrors)] };
    }

    private static Phrase Nearest(string key) => Keys.FirstOrDefault(k => Close(key, k)) is { } near ? StatementPhrases.DidYouMean(near)
        : ReadingPhrases.KeysAre(string.Join(", ", Keys));

    /// <summary>Whether two words have the same letters, or differ in one.</summary>
    private static bool Close(string typed, string key) => typed.Order().SequenceEqual(key.Order())
        || (typed.Length == key.Length && typed.Zip(key).Count(p => p.First != p.Second) == 1)
        || (typed.Length == key.Length + 1 && Enumerable.Range(0, typed.Length).Any(i => typed.Remove(i, 1) == key))
        || (key.Length == typed.Length + 1 && Enumerable.Range(0, key.Length).Any(i => key.Remove(i, 1) == typed));

    private ReadNode? Node(string key) => map.Entries.FirstOrDefault(e => e.Key.Text == key).Value;

    private string? Text(string key) => Node(key) is ReadText text && text.Text.Length > 0 ? text.Text : null;

    private IEnumerable<ReadText> Texts(string key) => Node(key) switch
    {
        null => [],
        ReadText text => [text],
        ReadList list => list.Of.OfType<ReadText>(),
        var other => Wrong<ReadText>(key, other.At),
    };

    private IEnumerable<(ReadText Key, ReadText Value)> Pairs(string key) => Node(key) switch
    {
        null => [],
        ReadMap pairs => pairs.Entries.Where(e => e.Value is ReadText).Select(e => (e.Key, (ReadText)e.Value)),
        var other => Wrong<(ReadText, ReadText)>(key, other.At),
    };

    private IEnumerable<(string? Letter, ReadText Text)> Goals() => Node("find") is ReadMap letters
        ? letters.Entries.SelectMany(e => (e.Value is ReadList list ? list.Of.OfType<ReadText>() : e.Value is ReadText one ? [one] : []).Select(t => ((string?)e.Key.Text, t)))
        : Texts("find").Select(t => ((string?)null, t));

    private (Expr? Lengths, Expr? Angles)? Accuracy()
    {
        if (Node("accuracy") is not ReadText text) return null;
        if (AccuracyText.Read(text.Text) is { } read) return read;
        if (!errors.Any(e => e.Lines[0] == text.At.Line)) Add(ErrorCodes.UnreadableNumber, text.At, StatementPhrases.NotAValue(text.Text), null);
        return null;
    }

    private IEnumerable<RoundingRule> Roundings()
    {
        IEnumerable<(string? Of, ReadText Rule)> rules = Node("round") is ReadText one ? [(null, one)] : Pairs("round").Select(p => ((string?)p.Key.Text, p.Value));
        foreach ((string? of, ReadText rule) in rules)
        {
            if (RoundingText.Read(rule.Text) is { } rounding) yield return new(of, rounding);
            else Add(ErrorCodes.UnreadableNumber, rule.At, ReadingPhrases.CannotRound(rule.Text), null);
        }
    }

    private FigureStatement? Statement(ReadText text)
    {
        if (StatementGrammar.TryRead(text.Text, out Statement? says, out Fault? fault)) return new(says, text.At);
        Add(fault.Code, text.At, fault.Message, fault.Remedy);
        return null;
    }

    private Goal? Goal(string? letter, ReadText text, HashSet<string> points)
    {
        if (GoalReader.Read(text.Text) is not { } goal)
        {
            Add(ErrorCodes.UnreadableStatement, text.At, ReadingPhrases.CannotFind(text.Text), null);
            return null;
        }

        IEnumerable<Point> named = goal.Wanted is { } wanted ? Mentions.Points(wanted) : goal.Shape is { } shape ? Mentions.Points(shape) : [];
        if (points.Count > 0 && named.FirstOrDefault(p => !points.Contains(p.Name)) is { } stranger)
        {
            Add(ErrorCodes.UnknownPoint, text.At, ReadingPhrases.UnknownPoint(text.Text, stranger.Name, string.Join(", ", points.Order(StringComparer.Ordinal))), ReadingPhrases.SayWhere(stranger.Name));
            return null;
        }

        return goal with { Letter = letter, At = text.At };
    }

    private IEnumerable<T> Wrong<T>(string key, Position at)
    {
        Add(ErrorCodes.WrongShape, at, ReadingPhrases.WrongShape(key), null);
        return [];
    }

    private void Add(string code, Position at, Phrase message, Phrase? remedy) => errors.Add(new(code, [at.Line], at.Column, message, remedy));
}
