namespace Explain;

/// <summary>What fills a role of a rule.</summary>
public abstract record RoleValue;
