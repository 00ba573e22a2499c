namespace Explain;

/// <summary>A value that answers, one for each case and item.</summary>
/// <param name="Case">The case, when there are several.</param>
/// <param name="Item">The item, when the answer has several.</param>
/// <param name="From">The claim that reaches it.</param>
/// <param name="Value">The value; null for what is not a number.</param>
/// <param name="Round">How it is rounded when printed.</param>
/// <param name="Bounds">Its bounds, when asked for or when the data carry tolerances.</param>
public sealed record AnswerValue(string? Case, string? Item, ClaimId From, Value? Value, Rounding? Round, Bounds? Bounds);
