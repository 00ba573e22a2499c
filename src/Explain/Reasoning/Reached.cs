namespace Explain;

/// <summary>Steps towards goals.</summary>
/// <param name="Steps">The steps.</param>
/// <param name="Impossible">Whether they end where no such figure exists.</param>
internal sealed record Reached(Items<Step> Steps, bool Impossible);
