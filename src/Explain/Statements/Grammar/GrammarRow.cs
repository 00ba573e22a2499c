namespace Explain;

/// <summary>One row of a table of the grammar: what is printed in each English, and every other way of typing it.</summary>
internal sealed class GrammarRow
{
    private readonly Pattern unitedKingdom;
    private readonly Pattern unitedStates;

    public GrammarRow(string unitedKingdom, string? unitedStates = null, params ReadOnlySpan<string> also)
    {
        this.unitedKingdom = Pattern.Of(unitedKingdom).Single();
        this.unitedStates = Pattern.Of(unitedStates ?? unitedKingdom).Single();
        Readings = [.. ((string[])[unitedKingdom, unitedStates ?? unitedKingdom, .. also]).SelectMany(Pattern.Of).DistinctBy(p => p.Text)];
        string slots = Examples(this.unitedKingdom);
        if (Readings.FirstOrDefault(r => Examples(r) != slots) is { } other) throw new ArgumentException($"{other.Text} has other letters than {unitedKingdom}", nameof(also));
    }

    /// <summary>Every pattern that is read.</summary>
    public Items<Pattern> Readings { get; }

    /// <summary>The pattern that an English prints.</summary>
    public Pattern In(English english) => english == English.UnitedStates ? unitedStates : unitedKingdom;

    /// <summary>Reads the row where it begins at a token: its objects in the order of the printed pattern, and the place after it.</summary>
    public (Items<Named> Of, int End)? Match(ReadOnlySpan<TextToken> tokens, int at)
    {
        (Items<Named> Of, int End)? longest = null;
        foreach (Pattern reading in Readings)
        {
            if (reading.Match(tokens, at) is { } match && (longest is null || match.End > longest.Value.End) && InOrder(reading, match) is { } of)
                longest = (of, match.End);
        }

        return longest;
    }

    /// <summary>Prints the row; null when it cannot say these objects.</summary>
    public Items<StatementPiece>? Write(Items<Named> of, English english) =>
        unitedKingdom.Share(of) is { } shared ? In(english).Write(Reordered(unitedKingdom, In(english), shared), english) : null;

    private static string Examples(Pattern pattern) => string.Join(' ', pattern.Slots.Select(s => s.Example).Order(StringComparer.Ordinal));

    private Items<Named>? InOrder(Pattern reading, Matching match)
    {
        Items<Items<Named>> slots = Reordered(reading, unitedKingdom, match.Slots);
        return CornersBelong(slots) ? [.. slots.SelectMany(s => s)] : null;
    }

    /// <summary>Slots with one example letter are the same slot.</summary>
    private static Items<Items<Named>> Reordered(Pattern from, Pattern to, Items<Items<Named>> slots) =>
        ReferenceEquals(from, to) ? slots : [.. to.Slots.Select(t => slots[from.Slots.TakeWhile(f => f.Example != t.Example).Count()])];

    /// <summary>What the example takes from a polygon's corners must be corners in what was read: right-angled at B.</summary>
    private bool CornersBelong(Items<Items<Named>> slots)
    {
        Items<PatternPart> own = unitedKingdom.Slots;
        for (int p = 0; p < own.Count; p++)
        {
            if (own[p].Kind != SlotKind.Polygon) continue;
            for (int i = p + 1; i < own.Count; i++)
                if (own[i].Example.All(c => own[p].Example.Contains(c)) && !slots[i].SelectMany(Mentions.Points).All(((Polygon)slots[p][0]).Corners.Contains)) return false;
        }

        return true;
    }
}
