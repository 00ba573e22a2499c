using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Explain;

/// <summary>Writes what became of a problem as one JSON object on one line: its answers, or what is wrong with it.</summary>
public static class AnswersJson
{
    // The text goes to files and pipes, never into a page: letters and signs may stand as they are.
    private static readonly JsonWriterOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The object, without a line feed.</summary>
    /// <param name="file">The name of the file, as typed.</param>
    /// <param name="result">What became of it.</param>
    /// <param name="renderer">Words the texts.</param>
    public static string Write(string file, SolveResult result, Renderer renderer)
    {
        using MemoryStream stream = new();
        using (Utf8JsonWriter json = new(stream, Options))
        {
            json.WriteStartObject();
            json.WriteNumber("schema", 1);
            json.WriteString("file", file);
            json.WriteString("library", typeof(AnswersJson).Assembly.GetName().Version!.ToString(3));
            Outcome(json, result, renderer);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static void Outcome(Utf8JsonWriter json, SolveResult result, Renderer renderer)
    {
        switch (result)
        {
            case Solved solved:
                new SolvedJson(json, solved.Solution, renderer).Write();
                break;
            case Refused refused:
                json.WriteString("outcome", "refused");
                json.WriteStartArray("errors");
                foreach (ProblemError error in refused.Errors) Error(json, error, renderer);
                json.WriteEndArray();
                json.WriteNumber("more", refused.More);
                break;
            default:
                json.WriteString("outcome", "failed");
                break;
        }
    }

    private static void Error(Utf8JsonWriter json, ProblemError error, Renderer renderer)
    {
        json.WriteStartObject();
        json.WriteString("code", error.Code);
        json.WriteStartArray("lines");
        foreach (int line in error.Lines) json.WriteNumberValue(line);
        json.WriteEndArray();
        if (error.Column > 0) json.WriteNumber("column", error.Column);
        else json.WriteNull("column");
        json.WriteString("message", renderer.Say(error.Message));
        json.WriteString("remedy", error.Remedy is { } remedy ? renderer.Say(remedy) : null);
        json.WriteEndObject();
    }
}
