namespace Explain;

/// <summary>What a step says of the roots of an earlier quadratic equation: how many are lengths, and what the others are.</summary>
internal static class RootCounts
{
    public static bool Holds(Step step, Seen seen, int bits) => step is Deduction && seen.Of(step.Why.From).ToArray() is [{ Claim: Quadratic q } of, ..] from && from.Length == step.Why.From.Count
        && Moving(step) is { } moving && Start(q) is { } start && Mentions.Points(q.For).ToHashSet().SetEquals([start, moving]) && (step.Why.Rule.Name == "midway-between-roots" ? step.Why.When.Count == 0 && IsMidway(step, q, from, seen, bits)
        : step.Says is HowMany { Such: [Place { Kind: PlaceKind.Triangle, Of: [Polygon triangle] }] } many && Mentions.Points(q.For).All(triangle.Corners.Contains)
            && step.Why.When == When(step.Why.Rule.Name, q) && Is(step, q, moving, from[1..], many.Count, [.. q.Roots.Select(r => seen.Find(r.Id)?.Closed is { } closed ? Evaluator.Sign(closed) : null)]));

    /// <summary>What the lesser root must be; nothing where there is one root only.</summary>
    private static Items<Compare> When(string rule, Quadratic q) => q.Roots.Count < 2 ? [] :
    [
        Compare.Of(new ValueOf(q.Roots[1].Id), rule switch { "other-root-is-negative" => Relation.Less, "other-root-is-zero" => Relation.Equal, _ => Relation.Greater }, new Quantity(Exact.Zero, Unit.Metre)),
    ];

    private static bool Is(Step step, Quadratic q, Point moving, Testimony[] others, int count, int?[] signs) => (step.Why.Rule.Name, signs, count) switch
    {
        ("both-roots", [1, 1], 2) or ("other-root-is-negative", [1, -1], 1) or ("only-root", [1], 1) => others.Length == 0 && step.Why.Roles.Count == 1,
        ("other-root-is-zero", [1, 0], 1) => others.Length == 0 && step.Why.Roles is [_, { Name: "start", Is: Objects { Are: [Point start] } }] && start == Start(q),
        ("other-root-is-excluded", [1, 1], 2) => step.Why.Roles.Count == 1 && others is [{ Claim: Premise { Says: Place { Kind: PlaceKind.Acute or PlaceKind.Obtuse, Of: [Corner { Vertex: var vertex }] } } }] && vertex == moving,
        _ => false,
    };

    /// <summary>The foot of the height lies as far from the start as half the sum of the roots, so the two places are equally far from it.</summary>
    private static bool IsMidway(Step step, Quadratic q, Testimony[] from, Seen seen, int bits) =>
        step is { Says: Compare { Between: [Relation.Equal], Terms: [SymbolUse { Symbol: Length part }, var half] }, Why.Roles: [{ Name: "foot", Is: Objects { Are: [Point foot] } }, _] }
        && q.Roots is [var first, var second] && half == (new ValueOf(first.Id) + new ValueOf(second.Id)) / 2
        && Moving(step) is { } moving && new Length(Mentions.Points(q.For).First(p => p != moving), foot) == part
        && from is [_, { Claim: Instruction { Makes: [Point made] } }, { Of: { } of, Closed: { } found }] && of == part && made == foot
        && seen.Close(half) is { } closed && Agreement.Number(closed, bits) is { } x && Agreement.Number(found, bits) is { } y && Agreement.Of(x, y);

    private static Point? Moving(Step step) => step.Why.Roles.FirstOrDefault(r => r.Name == "moving") is { Is: Objects { Are: [Point moving] }, IsCondition: false } ? moving : null;

    /// <summary>The corner of the angle that the equation was set up with.</summary>
    private static Point? Start(Quadratic q) => q.Linear.Bindings.Select(b => b.Of).OfType<Angle>().ToArray() is [var angle] ? angle.Vertex : null;
}
