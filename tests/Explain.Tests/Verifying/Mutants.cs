using Fractions;

namespace Explain.Tests.Verifying;

/// <summary>Every way to spoil one step of a solution that the referee must see.</summary>
internal static class Mutants
{
    /// <summary>Exchanges that give the same instance of the rule: the rule is the same both ways round in these roles.</summary>
    private static readonly (string Rule, string First, string Second)[] Symmetric =
    [
        ("cosine-rule", "first", "second"), // the two sides at the angle
        ("foot-between", "first", "second"), // the two ends of one segment
        ("angle-sum-of-a-triangle", "first", "second"), ("angle-sum-of-a-triangle", "first", "third"), ("angle-sum-of-a-triangle", "second", "third"), // three angles, added
        ("equal-sides", "first", "second"), // one equality, either way round
        ("isosceles-triangle", "first", "second"), // the two base angles
        ("isosceles-triangle", "side", "other"), // the two equal sides
        ("isosceles-angle-sum", "side", "other"), // the two equal sides
        ("isosceles-triangle-converse", "first", "second"), // the two equal sides
        ("equal-angles", "first", "second"), // one equality, either way round
        ("acute-angles-of-a-right-angled-triangle", "first", "second"), // the two acute angles, added
        ("pythagoras", "first", "second"), // the two legs
        ("parts-of-a-segment", "first", "second"), // two parts of one sum
        ("height-on-a-baseline", "first", "second"), // the angles at the two ends, added
        ("area-from-two-sides", "first", "second"), // the two sides at the angle
        ("area-from-a-side-and-the-angles", "first", "second"), // the angles at the two ends of the side, two factors of one product
        ("area-from-legs", "first", "second"), // the two sides at the right angle
        ("half-perimeter-from-sides", "first", "second"), ("half-perimeter-from-sides", "second", "third"), ("half-perimeter-from-sides", "first", "third"), // three terms of one sum
        ("perimeter-of-a-triangle", "first", "second"), ("perimeter-of-a-triangle", "second", "third"), ("perimeter-of-a-triangle", "first", "third"), // three terms of one sum
        ("angle-sum-of-a-triangle", "first", "second"), ("angle-sum-of-a-triangle", "second", "third"), ("angle-sum-of-a-triangle", "first", "third"), // three terms of one sum
        ("perimeter-and-sines", "first", "second"), // two terms of one sum
        ("perimeter-and-an-angle", "other", "side"), // the two sides at the angle: multiplied out, the equation is the same in both
        ("herons-formula", "first", "second"), ("herons-formula", "second", "third"), ("herons-formula", "first", "third"), // three factors of one product
        ("circle-through-the-corners-and-area", "first", "second"), ("circle-through-the-corners-and-area", "second", "third"), ("circle-through-the-corners-and-area", "first", "third"),
        ("one-triangle-from-two-angles", "first", "second"), // the angles at the two ends of the side
        ("one-triangle-with-the-angle-between", "first", "second"), // the two sides at the angle
        ("longest-side", "first", "second"), ("no-triangle-from-three-sides", "first", "second"), // two terms of one sum
        ("no-triangle-from-two-angles", "first", "second"), // two terms of one sum
    ];

    public static IEnumerable<(string Name, Solution Is)> Of(Solution solution) =>
        solution.Steps.SelectMany(step => Steps(step).Select(m => ($"{step.Id.Name} {step.Why.Rule.Name}: {m.Name}", With(solution, step, m.Is))));

    private static IEnumerable<(string Name, Step Is)> Steps(Step step) => [.. Premises(step), .. Letters(step), .. Comparisons(step), .. Roles(step), .. Rules(step), .. Values(step), .. Formulas(step), .. Roots(step), .. Cases(step)];

    private static IEnumerable<(string, Step)> Premises(Step step) => step.Why.From.Select(id =>
        ($"without {id.Name}", step with { Why = step.Why with { From = [.. step.Why.From.Where(f => f != id)] } }));

    /// <summary>A comparison that is left out, turned round, or not the rule's.</summary>
    private static IEnumerable<(string, Step)> Comparisons(Step step) =>
    [
        .. step.Why.When.SelectMany(w => new[] { ("without a comparison", (Items<Compare>)[.. step.Why.When.Where(o => o != w)]),
            ("a comparison turned round", [.. step.Why.When.Select(o => o != w ? o : w with { Terms = [.. w.Terms.Reverse()] })]) }).Append(("a comparison more", step.Why.When.With(Compare.Of(1, Relation.Less, 2))))
            .Select(m => (m.Item1, step with { Why = step.Why with { When = m.Item2 } })),
    ];

    private static IEnumerable<(string, Step)> Roles(Step step)
    {
        Items<Role> roles = step.Why.Roles;
        for (int i = 0; i < roles.Count; i++)
            for (int j = i + 1; j < roles.Count; j++)
            {
                if (roles[i].Is == roles[j].Is || Symmetric.Contains((step.Why.Rule.Name, roles[i].Name, roles[j].Name))) continue;
                Role[] other = [.. roles];
                (other[i], other[j]) = (roles[i] with { Is = roles[j].Is }, roles[j] with { Is = roles[i].Is });
                yield return ($"{roles[i].Name} for {roles[j].Name}", step with { Why = step.Why with { Roles = [.. other] } });
            }
    }

    private static IEnumerable<(string, Step)> Rules(Step step) => RuleBook.Standard.Rules.Where(r => r.Id != step.Why.Rule)
        .Select(r => (r.Id.Name, step with { Why = step.Why with { Rule = r.Id } }));

    private static IEnumerable<(string, Step)> Letters(Step step)
    {
        if (step is not Algebra a) yield break;
        Expr other = new Quantity(Exact.Of(7), Unit.None);
        yield return ("another value", a with { Says = Compare.Equal(a.For, other) });
        yield return ("another start", a with { Start = Compare.Equal(a.Start.Terms[0], other) });
        for (int i = 0; i < a.Lines.Count; i++)
        {
            EquationLine line = a.Lines[i];
            yield return ($"line {i} spoilt", a with { Lines = [.. a.Lines.Select((l, n) => n == i ? line with { Says = new(line.Says.Left, line.Says.Right + other) } : l)] });
        }

        yield return ("another letter", a with { For = new Letter("z") });
    }

    private static IEnumerable<(string, Step)> Values(Step step)
    {
        if (step is not Calculation c) yield break;
        // A value of 0 is moved as well.
        Enclosure nudge = Enclosure.Of((c.Value.True.Sign is null or 0 ? Fraction.One : c.Value.True.Middle) * new Fraction(1, 1_000_000), c.Value.True.Bits);
        yield return ("a digit", c with { Value = c.Value with { Exact = null, True = c.Value.True + nudge } });
        if (c.Value.Exact?.Rational is { } exact) yield return ("a digit of the exact value", c with { Value = c.Value with { Exact = Exact.Of(exact + new Fraction(1, 1000)) } });
    }

    private static IEnumerable<(string, Step)> Formulas(Step step)
    {
        if (step is not Calculation c) yield break;
        Expr[] parts = [.. c.Formula.Subtrees().Where(e => e is Sum or Difference or Product or Quotient)];
        foreach (Expr part in parts)
        {
            Expr formula = c.Formula.Substitute(e => ReferenceEquals(e, part) ? Spoilt(part) : null);
            yield return ("formula " + part.GetType().Name, c with { Formula = formula, Says = Compare.Equal(c.Target, formula) });
        }
    }

    private static Expr Spoilt(Expr expr) => expr switch
    {
        Sum s => new Difference(s.Left, s.Right),
        Difference d => new Difference(d.Right, d.Left),
        Product p => new Quotient(p.Left, p.Right),
        Quotient q => new Quotient(q.Right, q.Left),
        _ => throw new ArgumentException(expr.ToString()),
    };

    private static IEnumerable<(string, Step)> Roots(Step step)
    {
        if (step is not Quadratic q) yield break;
        yield return ("the coefficients exchanged", q with { Linear = q.Constant, Constant = q.Linear });
        yield return ("another law", q with { Law = Compare.Equal(q.Law.Terms[1], q.Law.Terms[0] + 1) });
        foreach (Calculation root in q.Roots) yield return ($"without {root.Id.Name}", q with { Roots = [.. q.Roots.Where(r => r != root)] });
        if (q.Roots.Count == 2) yield return ("the roots exchanged", q with { Roots = [q.Roots[1], q.Roots[0]] });
    }

    private static IEnumerable<(string, Step)> Cases(Step step)
    {
        if (step is not Split split) yield break;
        foreach (Case one in split.Cases)
        {
            Case other = split.Cases.First(c => c != one);
            if (one.Label is not null) yield return ($"case {one.Name} named like another", split with { Cases = [.. split.Cases.Select(c => c != one ? c : one with { Label = other.Label })] });
            yield return ($"without case {one.Name}", split with { Cases = [.. split.Cases.Where(c => c != one)] });
            yield return ($"case {one.Name} ends otherwise", split with { Cases = [.. split.Cases.Select(c => c != one ? c : one with { End = one.End == CaseEnd.Holds ? CaseEnd.Impossible : CaseEnd.Holds })] });
        }
    }

    private static Solution With(Solution solution, Step old, Step other) => solution with
    {
        Parts = [.. solution.Parts.Select(part => part with { Passages = [.. part.Passages.Select(passage => passage with { Steps = [.. passage.Steps.Select(s => Within(s, old, other))] })] })],
    };

    private static Step Within(Step step, Step old, Step other) => ReferenceEquals(step, old) ? other
        : step is Series series ? series with { Rows = [.. series.Rows.Select(r => r with { Cells = [.. r.Cells.Select(c => Within(c, old, other))] })] }
        : step is Quadratic q && other is Calculation put ? q with { Linear = ReferenceEquals(q.Linear, old) ? put : q.Linear, Constant = ReferenceEquals(q.Constant, old) ? put : q.Constant, Roots = [.. q.Roots.Select(r => ReferenceEquals(r, old) ? put : r)] }
        : step is Split split ? split with { Cases = [.. split.Cases.Select(c => c with { Steps = [.. c.Steps.Select(s => Within(s, old, other))] })] } : step;
}
