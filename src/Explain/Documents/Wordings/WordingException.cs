namespace Explain;

/// <summary>
/// A wording cannot be used: a phrase has no words, or its words place an argument that it does not have, or a house wording
/// names no phrase, leaves a condition of its rule out, or brings a number or the name of an object of its own. The library's own wordings are checked when it is compiled.
/// </summary>
public sealed class WordingException : Exception
{
    /// <summary>Says which wording.</summary>
    public WordingException(string id, string? placeholder, string? suggestion = null, string? stranger = null)
        : base(id + (placeholder is null ? "" : " {" + placeholder + "}") + (stranger is null ? "" : " “" + stranger + "”") + (suggestion is null ? "" : " → " + suggestion)) =>
        (Id, Placeholder, Suggestion, Stranger) = (id, placeholder, suggestion, stranger);

    /// <summary>The id of the phrase or rule.</summary>
    public string Id { get; }

    /// <summary>The placeholder that is not supplied, or the condition that is left out; null when the id itself is at fault.</summary>
    public string? Placeholder { get; }

    /// <summary>The nearest id that there is; null when none is near.</summary>
    public string? Suggestion { get; }

    /// <summary>The number, or what reads like the name of a point or a line, that the library's words for this id do not hold; null when there is none.</summary>
    public string? Stranger { get; }
}
