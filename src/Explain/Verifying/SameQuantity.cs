namespace Explain;

/// <summary>A quantity found twice has one value; where one of the two is given, that is said.</summary>
internal static class SameQuantity
{
    public static bool Holds(Step step, Seen seen, RayNames rays, int bits)
    {
        if (step.Why.Rule.Name is not ("same-quantity" or "as-given")) return false;
        if (step is not Deduction { Says: Compare { Between: [Relation.Equal], Terms: [SymbolUse { Symbol: var symbol }, ValueOf value] } }) return false;
        if (step.Why.Roles.Count > 0 || step.Why.From.Count != 2 || step.Why.From[0] == step.Why.From[1] || !step.Why.From.Contains(value.Claim)) return false;
        Testimony[] from = [.. seen.Of(step.Why.From)];
        if (seen.Find(value.Claim)?.Claim is Premise != (step.Why.Rule.Name == "as-given")) return false;
        return from is [{ Of: { } a, Closed: { } first }, { Of: { } b, Closed: { } second }]
            && rays.Of(a) == rays.Of(symbol) && rays.Of(b) == rays.Of(symbol)
            && Agreement.Number(first, bits) is { } x && Agreement.Number(second, bits) is { } y && Agreement.Of(x, y);
    }
}
