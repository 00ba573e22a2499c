namespace Explain;

/// <summary>As many triangles as cases hold, or one where each side has one value.</summary>
internal static class CountOfCases
{
    public static bool Holds(Step step, Seen seen)
    {
        if (step is not Deduction { Says: HowMany { Such: [Place { Kind: PlaceKind.Triangle, Of: [Polygon triangle] }] } many } || step.Why.Rule.Name != "as-many-as-cases" || step.Why.Roles.Count > 0) return false;
        Testimony[] from = [.. seen.Of(step.Why.From)];
        if (from is [{ Claim: Split split }]) return split.Cases.Count(c => c.End == CaseEnd.Holds) == many.Count;
        return many.Count == 1 && from.Length == triangle.Corners.Count && from.All(t => t.Closed is not null)
            && from.Select(t => t.Of).ToHashSet().SetEquals(TriangleParts.Sides(triangle));
    }
}
