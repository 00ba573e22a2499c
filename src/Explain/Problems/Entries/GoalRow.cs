namespace Explain;

/// <summary>A row of the table of things to find.</summary>
/// <param name="Row">Its words.</param>
/// <param name="Make">The goal with these objects.</param>
internal sealed record GoalRow(GrammarRow Row, Func<Items<Named>, Goal> Make);
