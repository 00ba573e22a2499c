namespace Explain.Tests;

/// <summary>A row of the grammar with objects for the letters of its example.</summary>
internal sealed record FilledRow(GrammarRow Row, Dictionary<string, Items<Named>> Slots)
{
    /// <summary>The objects, in the order of the printed pattern.</summary>
    public Items<Named> Of => [.. Row.In(English.UnitedKingdom).Slots.SelectMany(s => Slots[s.Example])];

    /// <summary>The row as typed in each of the ways that are read, with the signs of an English; m stands only before ∠.</summary>
    public IEnumerable<string> Typed(English english) =>
        Row.Readings.Where(r => english == English.UnitedStates || !r.Text.Contains("m∠", StringComparison.Ordinal)).Select(r => string.Concat(r.Write([.. r.Slots.Select(s => Slots[s.Example])], english).Select(p => p.Words)));
}
