namespace Explain;

/// <summary>A file that cannot be taken as data.</summary>
internal sealed class ReadFault(string code, Position at, Phrase message) : Exception(code)
{
    public string Code { get; } = code;

    public Position At { get; } = at;

    public Phrase Says { get; } = message;
}
