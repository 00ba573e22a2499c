namespace Explain;

/// <summary>What stands for the value of a claim.</summary>
/// <param name="Value">The value; null where a letter in it is not known.</param>
/// <param name="Formula">The formula, to be printed where there is no value.</param>
/// <param name="IsGiven">Whether it was given, so that its exact form is the number itself.</param>
internal sealed record ClaimValue(Value? Value, Expr Formula, bool IsGiven);
