using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Explain;

/// <summary>
/// Reads YAML from the event stream: every value is text, nothing is guessed. Anchors, aliases, tags, merge keys, duplicate keys
/// and second documents are refused. JSON is read the same way, since it is YAML too.
/// </summary>
internal sealed class YamlReader
{
    private const int MostNesting = 8, MostText = 10_000;
    private readonly Parser parser;
    private Position last = new(1, 1);

    private YamlReader(string text) => parser = new(new StringReader(text));

    /// <exception cref="ReadFault">The text cannot be taken as data.</exception>
    public static ReadNode Read(string text)
    {
        YamlReader reader = new(text);
        try
        {
            return reader.Document();
        }
        catch (Exception e) when (e is YamlException or InvalidOperationException or ArgumentException)
        {
            Position at = e is YamlException yaml ? Of(yaml.Start) : reader.last;
            throw new ReadFault("unreadable-file", at, ReadingPhrases.NotYaml());
        }
    }

    private ReadNode Document()
    {
        Take<StreamStart>();
        if (!parser.Accept<DocumentStart>(out _)) throw new ReadFault("unreadable-file", last, ReadingPhrases.EmptyFile());
        Take<DocumentStart>();
        ReadNode root = Node(0);
        Take<DocumentEnd>();
        if (!parser.Accept<StreamEnd>(out _)) throw new ReadFault("not-allowed-here", Of(parser.Current!.Start), ReadingPhrases.NotAllowed());
        return root;
    }

    private ReadNode Node(int depth)
    {
        ParsingEvent next = parser.Current!;
        last = Of(next.Start);
        if (depth > MostNesting) throw new ReadFault("too-large", last, ReadingPhrases.TooDeep());
        if (next is AnchorAlias || next is NodeEvent { Anchor.IsEmpty: false } || next is NodeEvent { Tag.IsEmpty: false })
            throw new ReadFault("not-allowed-here", last, ReadingPhrases.NotAllowed());
        return next switch
        {
            Scalar => Text(),
            SequenceStart => List(depth),
            MappingStart => Map(depth),
            _ => throw new ReadFault("unreadable-file", last, ReadingPhrases.NotYaml()),
        };
    }

    private ReadText Text()
    {
        Scalar scalar = Take<Scalar>();
        if (scalar.Value.Length > MostText) throw new ReadFault("too-large", last, ReadingPhrases.TextTooLong());
        return new(scalar.Value.Trim(), Of(scalar.Start));
    }

    private ReadList List(int depth)
    {
        Position at = Of(Take<SequenceStart>().Start);
        List<ReadNode> nodes = [];
        while (!parser.Accept<SequenceEnd>(out _)) nodes.Add(Node(depth + 1));
        Take<SequenceEnd>();
        return new([.. nodes], at);
    }

    private ReadMap Map(int depth)
    {
        Position at = Of(Take<MappingStart>().Start);
        List<(ReadText, ReadNode)> entries = [];
        HashSet<string> keys = [];
        while (!parser.Accept<MappingEnd>(out _))
        {
            if (Node(depth + 1) is not ReadText key) throw new ReadFault("wrong-shape", last, ReadingPhrases.KeyIsNotText());
            if (key.Text == "<<") throw new ReadFault("not-allowed-here", key.At, ReadingPhrases.NotAllowed());
            if (!keys.Add(key.Text)) throw new ReadFault("duplicate-key", key.At, ReadingPhrases.DuplicateKey(key.Text));
            entries.Add((key, Node(depth + 1)));
        }

        Take<MappingEnd>();
        return new([.. entries], at);
    }

    private T Take<T>()
        where T : ParsingEvent
    {
        T taken = parser.Consume<T>();
        if (taken is not StreamStart) last = Of(taken.Start);
        return taken;
    }

    private static Position Of(Mark mark) => new((int)mark.Line, (int)mark.Column);
}
