namespace Explain;

/// <summary>A row of the quantity table.</summary>
/// <param name="Row">Its words.</param>
/// <param name="Make">The quantity of these objects.</param>
/// <param name="Take">The objects of a quantity that this row may say; null when it is of another kind.</param>
internal sealed record QuantityRow(GrammarRow Row, Func<Items<Named>, Symbol> Make, Func<Symbol, Items<Named>?> Take);
