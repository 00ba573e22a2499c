using System.Text;
using System.Text.Json;

namespace Explain;

/// <summary>Reads JSON of the same structure as a YAML problem file; numbers and truths are taken as they are typed.</summary>
internal static class JsonFile
{
    public static FileTree Read(string text, ReadingLimits limits)
    {
        byte[] bytes = Encoding.UTF8.GetBytes(text);
        TreeBuilder builder = new(limits);
        LinePlaces places = new(bytes);
        Utf8JsonReader reader = new(bytes, new JsonReaderOptions { MaxDepth = limits.Nesting + 2 });
        Position last = new(1, 1);
        try
        {
            while (reader.Read())
            {
                last = places.Of((int)reader.TokenStartIndex);
                if (!Take(ref reader, builder, last)) return builder.Tree with { Root = null };
            }
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException)
        {
            return builder.Stopped(ReadingPhrases.NotJson(), ReadingPhrases.CheckTheLine(), places.Of((int)reader.BytesConsumed));
        }

        return builder.Tree;
    }

    private static bool Take(ref Utf8JsonReader reader, TreeBuilder builder, Position at)
    {
        switch (reader.TokenType)
        {
            case JsonTokenType.StartObject or JsonTokenType.StartArray:
                return builder.Open(reader.TokenType == JsonTokenType.StartObject, at);
            case JsonTokenType.EndObject or JsonTokenType.EndArray:
                builder.Close();
                return true;
            case JsonTokenType.PropertyName or JsonTokenType.String:
                builder.Text(reader.GetString()!, at);
                return true;
            default:
                builder.Text(Encoding.UTF8.GetString(reader.ValueSpan), at);
                return true;
        }
    }
}
