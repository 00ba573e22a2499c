using System.Text;

namespace Explain;

/// <summary>Reads a problem file: from its bytes to its tree.</summary>
internal static class ProblemFile
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The text of a file; null with what is wrong when it is too large or not UTF-8.</summary>
    /// <exception cref="IOException">The disc does not give the file.</exception>
    public static string? Text(string path, ReadingLimits limits, out ProblemError? error)
    {
        using FileStream stream = File.OpenRead(path);
        byte[] bytes = new byte[limits.FileBytes + 1];
        int read = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
        error = read > limits.FileBytes ? TooLarge(limits) : null;
        if (error is not null) return null;
        try
        {
            return Strict.GetString(bytes, 0, read);
        }
        catch (DecoderFallbackException e)
        {
            error = ProblemEntries.Error(new(ErrorCodes.UnreadableFile, ReadingPhrases.NotUtf8(), ReadingPhrases.SaveAsUtf8()), new LinePlaces(bytes).Of(int.Max(0, e.Index)));
            return null;
        }
    }

    /// <summary>The tree of a text.</summary>
    public static FileTree Tree(string text, string? fileName, ReadingLimits limits)
    {
        if (Encoding.UTF8.GetByteCount(text) > limits.FileBytes) return new(null, [TooLarge(limits)]);
        if (text.StartsWith('\uFEFF')) text = text[1..];
        bool isJson = fileName is not null && fileName.EndsWith(".json", StringComparison.OrdinalIgnoreCase);
        if (TextCheck.Of(text, isJson) is { } error) return new(null, [error]);
        if (!isJson && text.AsSpan().TrimStart().StartsWith("{") && JsonFile.Read(text, limits) is { Root: not null } json) return json;
        return isJson ? JsonFile.Read(text, limits) : YamlFile.Read(text, limits);
    }

    private static ProblemError TooLarge(ReadingLimits limits) =>
        ProblemEntries.Error(new(ErrorCodes.TooLarge, ReadingPhrases.FileTooLarge(limits.FileBytes / 1024), ProblemPhrases.RaiseTheLimit()), new Position(1, 1));
}
