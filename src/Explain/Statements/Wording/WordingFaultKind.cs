namespace Explain;

/// <summary>What can be wrong with a line of a wording file.</summary>
internal enum WordingFaultKind
{
    /// <summary>It is not <c>id: text</c>.</summary>
    NotAPair,

    /// <summary>The id holds more than lower-case letters, digits, hyphens, full stops and blanks.</summary>
    BadId,

    /// <summary>The text needs double quotes, or its quotes are not closed, or it escapes something else than <c>"</c> and <c>\</c>.</summary>
    BadQuotes,

    /// <summary>A brace is not closed, or what it holds is none of <c>{name}</c>, <c>{name|thing}</c>, <c>{name|line}</c>, <c>{name|1}</c>, <c>{name|2}</c> and <c>{name|one=…|other=…}</c>.</summary>
    BadBraces,
}
