using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Explain;

/// <summary>Reads YAML from the events of its parser: no type is guessed, and nothing is resolved.</summary>
internal static class YamlFile
{
    public static FileTree Read(string text, ReadingLimits limits)
    {
        TreeBuilder builder = new(limits);
        Parser parser = new(new StringReader(text));
        Position last = new(1, 1);
        int documents = 0;
        while (true)
        {
            try
            {
                if (!parser.MoveNext()) break;
            }
            catch (YamlException e)
            {
                return Stopped(builder, text, e.Start.Line > 0 ? At(e.Start) : last);
            }
            catch (Exception e) when (e is InvalidOperationException or ArgumentException)
            {
                return Stopped(builder, text, last);
            }

            last = At(parser.Current!.Start);
            if (parser.Current is DocumentStart && ++documents > 1)
            {
                builder.Refuse(ErrorCodes.NotAllowedHere, ReadingPhrases.SecondDocument(), ReadingPhrases.OneFileEach(), last);
                break;
            }

            if (!Take(parser.Current, builder, last)) return builder.Tree with { Root = null };
        }

        return builder.IsWhole ? builder.Tree : builder.Stopped(ReadingPhrases.EmptyFile(), ReadingPhrases.BeginWithATopic(), new(1, 1));
    }

    /// <summary>False when nothing more can be read.</summary>
    private static bool Take(ParsingEvent next, TreeBuilder builder, Position at)
    {
        switch (next)
        {
            case AnchorAlias alias:
                builder.Refuse(ErrorCodes.NotAllowedHere, ReadingPhrases.Alias(alias.Value.Value), ReadingPhrases.WriteItOut(), at);
                builder.Text("", at);
                return true;
            case DocumentStart { Tags.Count: > 0, IsImplicit: false } start when start.Tags.Any(t => t.Handle is not ("!" or "!!")):
                builder.Refuse(ErrorCodes.NotAllowedHere, ReadingPhrases.Directive(), ReadingPhrases.LeaveItOut(), at);
                return true;
            case Scalar scalar:
                Check(scalar, builder, at);
                bool merges = builder.AwaitsKey && scalar is { Value: "<<", Style: ScalarStyle.Plain };
                builder.Text(scalar.Value, at);
                if (!merges) return true;
                builder.Refuse(ErrorCodes.NotAllowedHere, ReadingPhrases.MergeKey(), ReadingPhrases.WriteItOut(), at);
                builder.LeaveOut();
                return true;
            case MappingStart or SequenceStart:
                Check((NodeEvent)next, builder, at);
                return builder.Open(next is MappingStart, at);
            case MappingEnd or SequenceEnd:
                builder.Close();
                return true;
            default:
                return true;
        }
    }

    private static void Check(NodeEvent node, TreeBuilder builder, Position at)
    {
        if (!node.Anchor.IsEmpty) builder.Refuse(ErrorCodes.NotAllowedHere, ReadingPhrases.Anchor(node.Anchor.Value), ReadingPhrases.LeaveItOut(), at);
        if (!node.Tag.IsEmpty) builder.Refuse(ErrorCodes.NotAllowedHere, ReadingPhrases.Tag(), ReadingPhrases.LeaveItOut(), at);
    }

    /// <summary>A title such as "Part 2: a pond" must stand in quotes.</summary>
    private static FileTree Stopped(TreeBuilder builder, string text, Position at)
    {
        string line = text.Split('\n').ElementAtOrDefault(at.Line - 1) ?? "";
        bool colons = line.Split(": ").Length > 2 && !line.Contains('"') && !line.Contains('{');
        return builder.Stopped(ReadingPhrases.NotYaml(), colons ? ReadingPhrases.QuoteColons() : ReadingPhrases.CheckTheLine(), at);
    }

    private static Position At(Mark mark) => new((int)mark.Line, (int)mark.Column);
}
