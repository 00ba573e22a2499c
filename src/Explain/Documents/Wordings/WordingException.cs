namespace Explain;

/// <summary>
/// A wording cannot be used: a phrase has no words, or its words place an argument that it does not have, or a house wording
/// names no phrase or leaves a condition of its rule out. The library's own wordings are checked when it is compiled.
/// </summary>
public sealed class WordingException : Exception
{
    /// <summary>Says which wording.</summary>
    public WordingException(string id, string? placeholder, string? suggestion = null)
        : base(id + (placeholder is null ? "" : " {" + placeholder + "}") + (suggestion is null ? "" : " → " + suggestion)) =>
        (Id, Placeholder, Suggestion) = (id, placeholder, suggestion);

    /// <summary>The id of the phrase or rule.</summary>
    public string Id { get; }

    /// <summary>The placeholder that is not supplied, or the condition that is left out; null when the id itself is at fault.</summary>
    public string? Placeholder { get; }

    /// <summary>The nearest id that there is; null when none is near.</summary>
    public string? Suggestion { get; }
}
