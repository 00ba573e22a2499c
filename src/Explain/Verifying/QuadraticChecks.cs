namespace Explain;

/// <summary>Whether a law is the equation x² + bx + c = 0 that a step makes of it, and its roots are all the roots.</summary>
internal sealed class QuadraticChecks(RayNames rays)
{
    private const int Bits = 384;

    /// <summary>The law is a multiple of the equation whatever its quantities are, and is printed as it stands.</summary>
    public bool Follows(Quadratic q, Equation law)
    {
        if (new Equation(rays.Of(q.Law.Terms[0]), rays.Of(q.Law.Terms[1])) != law || q.Law.Between is not [Relation.Equal]) return false;
        return IsShaped(q) && AreRoots(q) && LawInstance.IsMultiple(law, rays.Of(q.For), rays.Of(q.Linear.Formula), rays.Of(q.Constant.Formula));
    }

    /// <summary>The coefficients have letters of their own, the roots rest on nothing else, and the statement names each root.</summary>
    private static bool IsShaped(Quadratic q) => q.Linear.Target == Quadratic.B && q.Constant.Target == Quadratic.C
        && new[] { q.Linear, q.Constant }.All(c => c.Why == q.Why) && q.Roots.All(r => r.Why == q.Why && r.Target == q.For && r.Bindings.All(b => Names(q, b)))
        && q.Says == new AnyOf([.. q.Roots.Select(r => Compare.Equal(q.For, new ValueOf(r.Id)))]);

    private static bool Names(Quadratic q, Binding binding) => binding.Is is ValueOf v
        && (binding.Of == Quadratic.B && v.Claim == q.Linear.Id || binding.Of == Quadratic.C && v.Claim == q.Constant.Id);

    /// <summary>Their formulas give the roots whatever b and c are: two of them, or one where the discriminant is 0.</summary>
    private static bool AreRoots(Quadratic q) => ((int B, int C)[])(q.Roots.Count == 2 ? [(-7, 3), (5, -11), (-4, -13)] : [(-6, 9), (10, 25)]) is var draws && draws.All(d =>
        AreAll([.. q.Roots.Select(r => (Expr?)r.Formula.Replace(Quadratic.B, Metres(d.B, 1)).Replace(Quadratic.C, Metres(d.C, 2)))], Metres(d.B, 1), Metres(d.C, 2)));

    private static Quantity Metres(int number, int power) => new(Exact.Of(number), Unit.Metre.To(power));

    /// <summary>The sum of the roots is −b and their product is c, so there is no other; the greater comes first, and one that counts twice stands alone.</summary>
    public static bool AreAll(Items<Expr?> roots, Expr? b, Expr? c)
    {
        if (b is null || c is null || roots.Count is not (1 or 2) || roots[0] is not { } first || roots[^1] is not { } second) return false;
        if (Power(first) is not { } one || Power(second) != one || Power(b) != one || Power(c) != 2 * one) return false;
        bool apart = Agreement.Compare(first, second) == 1;
        return apart == (roots.Count == 2) && Agreement.Compare(new Power(b, 2), 4 * c) is { } sign && sign == (apart ? 1 : 0) && Number(first) is { } p && Number(second) is { } q
            && Number(b) is { } linear && Number(c) is { } constant && IsZero(p + q + linear) && IsZero(p * q - constant);
    }

    /// <summary>Of a length 1, of an area 2; null where there is no value.</summary>
    private static int? Power(Expr closed) => Agreement.Number(closed, Bits) is null ? null : (Evaluator.Evaluate(closed) as Evaluated)?.Value.Unit.Power;

    private static Enclosure? Number(Expr closed) => Agreement.Number(closed, Bits);

    private static bool IsZero(Enclosure difference) => difference.Width + difference.Middle.Abs() <= Agreement.Tolerance;
}
