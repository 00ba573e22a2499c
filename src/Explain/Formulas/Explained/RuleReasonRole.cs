namespace Explain;

/// <summary>A role of a rule, and the symbol of an explained method that fills it.</summary>
/// <param name="Name">The role.</param>
/// <param name="Is">The symbol.</param>
public sealed record RuleReasonRole(string Name, Letter Is);
