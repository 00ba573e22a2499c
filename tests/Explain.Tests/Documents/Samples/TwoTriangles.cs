using static Explain.Tests.Documents.Samples.Claims;

namespace Explain.Tests.Documents.Samples;

/// <summary>Two sides and an angle that is not between them: two triangles, each step written out.</summary>
internal static class TwoTriangles
{
    public static Problem Problem { get; } = new()
    {
        Topic = new("solve a triangle"),
        Title = "A prop on a rail",
        Question = "A beam AC, 2.5 m long, is fixed at A and makes an angle of 38° with a level rail AX. A prop CB, 1.8 m long, hangs from a hinge at C, and its other end B is to rest on the rail. Find all possible values of the distance AB, and the angle ABC in each case.",
        Names = [new("AC", "the beam"), new("CB", "the prop"), new("AX", "the rail")],
        Assume = ["the beam, the prop and the rail are thin and lie in one vertical plane"],
        Figure = [new(Statement("ABC is a triangle"), default), new(Statement("X is on AB produced"), default)],
        Given = [Given("angle BAC", "38°"), Given("AC", "2.5 m"), Given("CB", "1.8 m")],
        Find = [new("AB", Quantity("AB"), GoalKind.Value), new("angle ABC", Quantity("angle ABC"), GoalKind.Value)],
        File = "07-two-triangles.yaml",
    };

    public static Solution Solution { get; } = Solve();

    private static Solution Solve()
    {
        Claims claims = new();
        Items<Premise> premises =
        [
            claims.Premise("g1", Problem.Given[0]), claims.Premise("g2", Problem.Given[1]), claims.Premise("g3", Problem.Given[2]),
            Claims.Figure("f1", "ABC is a triangle"), Claims.Figure("f2", "X is on AB produced"),
        ];
        Passage existence = Existence(claims);
        Calculation sine = claims.Calculate("s4",
            Why("sine-rule", "g1 g2 g3", Amount("side", "AC"), Amount("angle", "angle ABC"), Amount("known", "CB"), Amount("across", "angle BAC")),
            [Compare.Equal(Sine("angle ABC") / Quantity("AC"), Sine("angle BAC") / Quantity("CB"))],
            new Ratio(Function.Sine, (Angle)Quantity("angle ABC")), Quantity("AC") * Sine("angle BAC") / Quantity("CB"), "AC=g2, angle BAC=g1, CB=g3");
        Case acute = Case(claims, 1, "angle ABC is acute"), obtuse = Case(claims, 2, "angle ABC is obtuse");
        Split split = new(new("s5"), new AnyOf([acute.Assume, obtuse.Assume]), Why("same-sine", "s4"), [acute, obtuse])
        {
            Remarks = [new(Phrase("sample.calculator"), null)],
        };
        Part part = new(null, Problem.Find, [Plan, existence, new(PassageUse.Working, [sine, split]), WhatIf()],
            [Answer(0, acute, obtuse, 3), Answer(1, acute, obtuse, 0)]);
        return new(Problem, Problem.Topic!.Value, premises, [part], [], [], [Phrase("sample.caution-strength")], Verification.NotRun);
    }

    private static Passage Plan => new(PassageUse.Plan, [])
    {
        Remarks = [new(Phrase("sample.plan-count"), null), new(Phrase("sample.plan-rule", new NamedArg("side", Line("CB"))), null)],
    };

    private static Passage Existence(Claims claims)
    {
        Instruction foot = new(new("s1"), Statement("F is the foot of the perpendicular from C to AX"), Why("let-foot", "f2"),
            Phrase("sample.let-foot", new NamedArg("foot", Point("F")), new NamedArg("from", Point("C")), new NamedArg("line", Line("AX"))), [Point("F")]);
        Calculation height = claims.Calculate("s2", Why("sine-ratio", "s1 g1 g2", Objects("triangle", Triangle("AFC")), Objects("corner", Point("F")), Amount("side", "CF"), Amount("angle", "angle BAC")), [],
            Quantity("CF"), Quantity("AC") * Sine("angle BAC"), "AC=g2, angle BAC=g1");
        Deduction between = Deduce("s3", Why("compare-height", "s2"), new Compare([Value("s2"), Value("g3"), Value("g2")], [Relation.Less, Relation.Less]));
        Deduction two = Deduce("s3.1", Why("reaches-twice", "s3", Amount("side", "CB"), Objects("from", Point("C")), Objects("foot", Point("F")), Amount("other", "AC"), Objects("corner", Point("A"))),
            new HowMany(Phrase("sample.triangles", new CountArg("n", 2)), [Statement("ABC is a triangle")], 2));
        return new(PassageUse.Existence, [foot, height, between, two]);
    }

    private static Case Case(Claims claims, int n, string assume)
    {
        string id = $"s5.{n}";
        Expr arc = new Apply(Function.ArcSine, new SymbolUse(new Ratio(Function.Sine, (Angle)Quantity("angle ABC"))));
        Calculation angle = claims.Calculate($"{id}.1", Why("sine-inverse", "s4"), [], Quantity("angle ABC"), n == 1 ? arc : Expr.Degrees(180) - arc, "sin ABC=s4");
        Deduction possible = Deduce($"{id}.2", Why("less-than-straight", $"g1 {id}.1"), new Compare([Value("g1") + Value($"{id}.1"), Expr.Degrees(180)], [Relation.Less]));
        Calculation third = claims.Calculate($"{id}.3", Why("angle-sum", $"g1 {id}.1"), [], Quantity("angle ACB"), Expr.Degrees(180) - Quantity("angle BAC") - Quantity("angle ABC"), $"angle BAC=g1, angle ABC={id}.1");
        Calculation side = claims.Calculate($"{id}.4", Why("sine-rule", $"g1 g3 {id}.3", Amount("side", "AB"), Amount("angle", "angle ACB"), Amount("known", "CB"), Amount("across", "angle BAC")), [],
            Quantity("AB"), Quantity("CB") * Sine("angle ACB") / Sine("angle BAC"), $"CB=g3, angle ACB={id}.3, angle BAC=g1");
        return new(n.ToString(System.Globalization.CultureInfo.InvariantCulture), Statement(assume), [angle, possible, third, side], CaseEnd.Holds);
    }

    private static Passage WhatIf()
    {
        Case One(int n, Statement assume, int count, CaseEnd end) => new(n.ToString(System.Globalization.CultureInfo.InvariantCulture), assume,
            [Deduce($"s9.{n}", Why("reaches-twice", ""), new HowMany(Phrase("sample.triangles", new CountArg("n", count)), [], count))], end);
        Statement Cb(Relation relation, Expr to) => Compare.Of(Quantity("CB"), relation, to);
        Split split = new(new("s9"), new AnyOf([]), Why("compare-height", "s2"),
        [
            One(1, Cb(Relation.Less, Value("s2")), 0, CaseEnd.NotThisProblem),
            One(2, Cb(Relation.Equal, Quantity("CF")), 1, CaseEnd.NotThisProblem),
            One(3, new Compare([Value("s2"), Quantity("CB"), Value("g2")], [Relation.Less, Relation.Less]), 2, CaseEnd.Holds),
            One(4, Cb(Relation.GreaterOrEqual, Value("g2")), 1, CaseEnd.NotThisProblem),
        ]);
        return new(PassageUse.WhenItChanges, [split]) { Heading = Phrase("sample.what-if", new NamedArg("side", Line("CB"))) };
    }

    private static Answer Answer(int goal, Case first, Case second, int step) => new(Problem.Find[goal],
        [.. new[] { first, second }.Select(c => (c.Name, Step: (Calculation)c.Steps[step])).Select(c => new AnswerValue(c.Name, null, c.Step.Id, c.Step.Value, null, null))]);
}
