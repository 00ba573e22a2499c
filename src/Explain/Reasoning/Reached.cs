namespace Explain;

/// <summary>Steps towards goals.</summary>
/// <param name="Steps">The steps.</param>
/// <param name="Impossible">Whether they end where no such figure exists.</param>
/// <param name="Cases">Each case that holds, with what is known in it; empty where the work did not divide.</param>
internal sealed record Reached(Items<Step> Steps, bool Impossible, Items<(string Name, Ledger Ledger)> Cases = default);
