namespace Explain;

/// <summary>A relation that a topic tries, and what a use of it costs a reader.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Cost">Its cost; the cheapest way is printed.</param>
/// <param name="Targets">How many of its first parameters it may be solved for; 0 for any.</param>
internal sealed record CostedRule(Rule Rule, double Cost, int Targets = 0);
