using static Explain.Tests.Documents.Samples.Claims;

namespace Explain.Tests.Documents.Samples;

/// <summary>A distance that cannot be walked, from a base line and two angles: parts (a) to (c), each step written out.</summary>
internal static class Mast
{
    public static Problem Problem { get; } = new()
    {
        Topic = new("inaccessible distance"),
        Title = "A mast beyond a crop",
        Question = "P and Q are gateposts 120 m apart on a straight farm track. A radio mast stands at T, in a crop that must not be walked on. From P, angle QPT = 62°. From Q, angle PQT = 71°.",
        Parts =
        [
            new("a", "Calculate PT and QT."),
            new("b", "Calculate the shortest distance from T to the track."),
            new("c", "PQ is correct to within 0.5 m and each angle to within 0.5°. Find bounds for your answer to (b)."),
        ],
        Names = [new("PQ", "the track"), new("T", "the radio mast")],
        Assume = ["the ground is level", "the track is straight"],
        Figure = [new(Statement("PQT is a triangle"), default)],
        Given = [Given("PQ", "120 m ± 0.5 m"), Given("angle QPT", "62° ± 0.5°"), Given("angle PQT", "71° ± 0.5°")],
        Find =
        [
            new("PT", Quantity("PT"), GoalKind.Value) { Letter = "a" }, new("QT", Quantity("QT"), GoalKind.Value) { Letter = "a" },
            new("distance from T to PQ", Quantity("distance from T to PQ"), GoalKind.Value) { Letter = "b" },
            new("bounds of distance from T to PQ", Quantity("distance from T to PQ"), GoalKind.Bounds) { Letter = "c" },
        ],
        File = "03-baseline-and-two-angles.yaml",
    };

    public static Solution Solution { get; } = Solve();

    private static Solution Solve()
    {
        Claims claims = new();
        Items<Premise> premises =
        [
            claims.Premise("g1", Problem.Given[0]), claims.Premise("g2", Problem.Given[1]), claims.Premise("g3", Problem.Given[2]),
            Claims.Figure("f1", "PQT is a triangle"),
        ];
        Part a = Distances(claims), b = Shortest(claims), c = Bounds(claims, (Calculation)b.Passages[0].Steps[2]);
        return new(Problem, Problem.Topic!.Value, premises, [a, b, c], [], [],
            [Phrase("sample.caution"), Phrase("sample.caution-permission")], Verification.NotRun);
    }

    private static Part Distances(Claims claims)
    {
        Calculation third = claims.Calculate("s1", Why("angle-sum", "f1 g2 g3"), [], Quantity("angle PTQ"),
            Expr.Degrees(180) - Quantity("angle QPT") - Quantity("angle PQT"), "angle QPT=g2, angle PQT=g3") with
        {
            Title = Phrase("sample.find-third"),
            Remarks = [new(Phrase("sample.smallest", new NamedArg("side", Line("PQ"))), null)],
        };
        Calculation pt = SineRule(claims, "s2", "PT", "angle PQT", "g3"), qt = SineRule(claims, "s3", "QT", "angle QPT", "g2");
        Check(claims, out Passage check);
        return new("a", [Problem.Find[0], Problem.Find[1]],
        [
            new(PassageUse.Plan, [])
            {
                Remarks = [new(Phrase("sample.plan", new NamedArg("side", Line("PQ")), new NamedArg("first", Line("PT")), new NamedArg("second", Line("QT"))), null), new(Phrase("sample.plan-height"), null)],
            },
            new(PassageUse.Working, [third, pt, qt]) { Heading = Phrase("sample.heading-distances", new NamedArg("first", Line("PT")), new NamedArg("second", Line("QT"))) },
            check,
        ], [Answer(0, pt), Answer(1, qt)]);
    }

    private static Calculation SineRule(Claims claims, string id, string side, string angle, string value) => claims.Calculate(id,
        Why("sine-rule", $"g1 {value} s1", Amount("side", side), Amount("angle", angle), Amount("known", "PQ"), Amount("across", "angle PTQ")),
        [Compare.Equal(new Quotient(Quantity(side), Sine(angle)), new Quotient(Quantity("PQ"), Sine("angle PTQ")))],
        Quantity(side), Quantity("PQ") * Sine(angle) / Sine("angle PTQ"), $"PQ=g1, {angle}={value}, angle PTQ=s1");

    private static void Check(Claims claims, out Passage check)
    {
        Calculation pf = claims.Calculate("s20", Why("cosine-ratio", "s2 g2", Objects("foot", Point("F")), Amount("part", "PF"), Amount("angle", "angle QPT")), [],
            Quantity("PF"), Quantity("PT") * Cosine("angle QPT"), "PT=s2, angle QPT=g2");
        Calculation fq = claims.Calculate("s21", Why("cosine-ratio", "s3 g3", Objects("foot", Point("F")), Amount("part", "FQ"), Amount("angle", "angle PQT")), [],
            Quantity("FQ"), Quantity("QT") * Cosine("angle PQT"), "QT=s3, angle PQT=g3");
        Deduction whole = Deduce("s22", Why("parts-of-segment", "s20 s21", Objects("foot", Point("F")), Objects("first", Point("P")), Objects("second", Point("Q"))),
            new Compare([new Sum(Quantity("PF"), Quantity("FQ")), Value("s20") + Value("s21"), Value("g1"), (Expr)Quantity("PQ")], [Relation.Equal, Relation.Equal, Relation.Equal]));
        check = new(PassageUse.Check, [pf, fq, whole]);
    }

    private static Part Shortest(Claims claims)
    {
        Instruction foot = new(new("s4"), Statement("F is the foot of the perpendicular from T to PQ"), Why("shortest-way", "", Amount("height", "TF")),
            Phrase("sample.let-foot", new NamedArg("foot", Point("F")), new NamedArg("from", Point("T")), new NamedArg("line", Line("PQ"))), [Point("F")])
        {
            Title = Phrase("sample.draw-height"),
        };
        Deduction inside = Deduce("s5", Why("foot-inside", "s4 g2 g3", Objects("first", new Corner(Point("Q"), Point("P"), Point("T"))), Objects("second", new Corner(Point("P"), Point("Q"), Point("T")))), Statement("F is on PQ"));
        Calculation height = claims.Calculate("s6", Why("sine-ratio", "s2 s4 g2", Objects("triangle", Triangle("PFT")), Objects("corner", Point("F")), Amount("side", "TF"), Amount("angle", "angle QPT")),
            [Compare.Equal(Sine("angle QPT"), new Quotient(Quantity("TF"), Quantity("PT")))], Quantity("TF"), Quantity("PT") * Sine("angle QPT"), "PT=s2, angle QPT=g2") with
        {
            Remarks = [new(Phrase("sample.unrounded", new NamedArg("side", Line("PT")), new StepArg("step", [new("s2")])), null)],
        };
        return new("b", [Problem.Find[2]], [new(PassageUse.Working, [foot, inside, height])], [Answer(2, height)]);
    }

    private static Part Bounds(Claims claims, Calculation height)
    {
        Expr one = 1;
        Expr closed = Quantity("PQ") / (one / Tangent("angle QPT") + one / Tangent("angle PQT"));
        Calculation formula = claims.Calculate("s7", Why("two-right-triangles", "s4 s5", Amount("height", "TF"), Amount("base", "PQ")),
            [Compare.Equal(Quantity("TF") / Tangent("angle QPT") + Quantity("TF") / Tangent("angle PQT"), Quantity("PQ"))], Quantity("TF"), closed, "PQ=g1, angle QPT=g2, angle PQT=g3") with
        {
            Title = Phrase("sample.write-height", new NamedArg("of", Line("TF"))),
        };
        Deduction[] varies =
        [
            Deduce("s8", Why("larger-numerator", "s7"), new Varies(Quantity("TF"), Quantity("PQ"), true)),
            Deduce("s9", Why("larger-tangent", "s7"), new Varies(Quantity("TF"), Quantity("angle QPT"), true)),
            Deduce("s10", Why("larger-tangent", "s7"), new Varies(Quantity("TF"), Quantity("angle PQT"), true)),
        ];
        SeriesRow upper = Row(claims, "s11.1", "sample.upper", closed, 1), lower = Row(claims, "s11.2", "sample.lower", closed, -1);
        Phrase[] columns = [.. new[] { "PQ", "angle QPT", "angle PQT", "TF" }.Select(q => Phrase("sample.cell", new FormulaArg("of", Quantity(q))))];
        Series series = new(new("s11"), new All([.. upper.Cells.Concat(lower.Cells).Select(s => s.Says)]), Why("monotone-corners", "s8 s9 s10"), [.. columns], [upper, lower], null);
        Value Last(SeriesRow row) => ((Calculation)row.Cells[3]).Value;
        AnswerValue value = new(null, null, new("s11"), height.Value, null, new(Last(lower), Last(upper), new Monotone([new("s8"), new("s9"), new("s10")])));
        return new("c", [Problem.Find[3]], [new(PassageUse.Bounds, [formula, .. varies, series]) { Heading = Phrase("sample.heading-bounds") }], [new(Problem.Find[3], [value])]);
    }

    private static SeriesRow Row(Claims claims, string id, string label, Expr closed, int sign)
    {
        Calculation Cell(int n, string quantity, string given, string within) => claims.Calculate($"{id}.{n}", Why("monotone-corners", "s8 s9 s10"), [],
            Quantity(quantity), sign > 0 ? Value(given) + Half(within) : Value(given) - Half(within), $"{quantity}={given}");
        return new(Phrase(label),
        [
            Cell(1, "PQ", "g1", "m"), Cell(2, "angle QPT", "g2", "°"), Cell(3, "angle PQT", "g3", "°"),
            claims.Calculate($"{id}.4", Why("monotone-corners", "s8 s9 s10"), [], Quantity("TF"), closed, $"PQ={id}.1, angle QPT={id}.2, angle PQT={id}.3"),
        ]);
    }

    private static Quantity Half(string unit) => new(Exact.Of(new Fractions.Fraction(1, 2)), Unit.Parse(unit)!);

    private static Answer Answer(int goal, Calculation from) => new(Problem.Find[goal], [new(null, null, from.Id, from.Value, null, null)]);
}
