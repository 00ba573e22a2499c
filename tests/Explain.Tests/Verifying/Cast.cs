using Explain.Tests.Placing;

namespace Explain.Tests.Verifying;

/// <summary>Problems of both topics, one for each kind of working.</summary>
internal static class Cast
{
    private const string Triangle = "solve a triangle", Distance = "inaccessible distance";

    public static readonly (string Name, Problem Of)[] Problems =
    [
        ("two angles and a side", Of(Triangle, "ABC is a triangle", ["AB = 7.3 m", "angle CAB = 41°", "angle ABC = 66°"], "BC", "CA")),
        ("three sides", Of(Triangle, "ABC is a triangle", ["AB = 9.5 cm", "BC = 7 cm", "CA = 6 cm"], "angle ABC", "angle BCA")),
        ("angle between", Of(Triangle, "ABC is a triangle", ["AB = 8 m", "CA = 5 m", "angle CAB = 60°"], "BC", "angle ABC")),
        ("two triangles", Of(Triangle, "ABC is a triangle", ["angle BAC = 38°", "AC = 2.5 m", "CB = 1.8 m"], "AB", "angle ABC")),
        ("two triangles in letters", Lettered(Of(Triangle, "RST is a triangle", ["angle TSR = 35°", "RT = 40 cm", "ST = 2 ft"], "angle SRT", "RS", "angle STR"))),
        ("ray with a name", Of(Triangle, "ABC is a triangle; X is on AB produced", ["angle CAX = 38°", "AC = 2.5 m", "CB = 1.8 m"], "AB", "angle ABC")),
        ("the acute one", Of(Triangle, "ABC is a triangle; angle ABC is acute", ["angle BAC = 38°", "AC = 2.5 m", "CB = 1.8 m"], "AB")),
        ("the obtuse one", Of(Triangle, "ABC is a triangle; angle ABC is obtuse", ["angle BAC = 38°", "AC = 2.5 m", "CB = 1.8 m"], "AB")),
        ("just reaches", Of(Triangle, "ABC is a triangle", ["angle BAC = 30°", "AC = 2 m", "CB = 1 m"], "AB")),
        ("the longer side opposite", Of(Triangle, "ABC is a triangle", ["angle BAC = 50°", "AC = 3 m", "CB = 4 m"], "AB", "angle ABC")),
        ("a large angle", Of(Triangle, "ABC is a triangle", ["angle BAC = 110°", "AC = 3 m", "CB = 4 m"], "AB", "angle ABC")),
        ("equal sides", Of(Triangle, "ABC is a triangle", ["angle BAC = 50°", "AC = 3 m", "CB = 3 m"], "AB")),
        ("equal sides, and the angle", Of(Triangle, "ABC is a triangle", ["angle ACB = 45°", "AB = 6 m", "BC = 6 m"], "angle BAC")),
        ("a right angle not between", Of(Triangle, "ABC is a triangle", ["angle BCA = 90°", "AC = 3 m", "AB = 4 m"], "CB", "angle ABC")),
        ("two legs", Of(Triangle, "ABC is a triangle, right-angled at B", ["AB = 5 cm", "BC = 11 cm"], "CA", "angle BAC", "angle BCA")),
        ("hypotenuse and leg", Of(Triangle, "ABC is a triangle; AC ⊥ CB", ["AB = 13 cm", "BC = 4 cm"], "CA", "angle BAC", "angle ABC")),
        ("leg and angle", Of(Triangle, "ABC is a triangle; angle ABC is a right angle", ["AB = 5 cm", "angle BAC = 34°"], "BC", "CA")),
        ("right angle as a measurement", Of(Triangle, "ABC is a triangle", ["angle ABC = 90°", "AC = 9 m", "angle BCA = 27°"], "AB", "BC")),
        ("right angle found", Of(Triangle, "ABC is a triangle", ["angle ABC = 32°", "angle BAC = 58°", "AB = 10 cm"], "BC", "CA")),
        ("converse of Pythagoras", Of(Triangle, "ABC is a triangle", ["AB = 3 cm", "BC = 4 cm", "CA = 5 cm"], "angle ABC", "angle BAC")),
        ("isosceles, angle between", Of(Triangle, "ABC is a triangle, isosceles with AB = AC", ["AB = 5 cm", "angle BAC = 40°"], "BC", "angle ABC", "angle ACB")),
        ("isosceles, base and base angle", Of(Triangle, "ABC is a triangle; AB = AC", ["BC = 6 cm", "angle ABC = 70°"], "AB", "AC", "angle BAC")),
        ("isosceles, base and apex", Of(Triangle, "ABC is a triangle; AB = AC", ["BC = 6 cm", "angle BAC = 50°"], "AC")),
        ("isosceles, three sides", Of(Triangle, "ABC is a triangle; AB = AC", ["AB = 5 cm", "BC = 6 cm"], "angle BAC", "angle ABC", "angle ACB")),
        ("equal angles", Of(Triangle, "ABC is a triangle; angle ABC = angle ACB", ["BC = 6 cm", "angle BAC = 50°"], "angle ACB", "AC", "AB")),
        ("equal angles found", Of(Triangle, "ABC is a triangle", ["angle BAC = 40°", "angle ABC = 70°", "AC = 6 cm"], "AB")),
        ("equilateral", Of(Triangle, "ABC is an equilateral triangle", ["AB = 5 cm"], "BC", "angle ABC")),
        ("a letter in the angles", Of(Triangle, "ABC is a triangle", ["angle ABC = (2x + 10)°", "angle BCA = 3x°", "angle CAB = (x + 20)°", "AB = 7 cm"], "x", "angle ABC", "BC")),
        ("a letter in the sides", Of(Triangle, "ABC is a triangle; AB = AC", ["AB = (2x + 3) cm", "AC = 11 cm", "BC = (x + 2) cm"], "x", "BC", "angle ABC")),
        ("a shape without a size", Of(Triangle, "ABC is a triangle; AB = AC", ["angle ABC = 3x°", "angle BAC = (x + 5)°"], "x", "angle ACB")),
        ("foot between", Of(Distance, "PQT is a triangle", ["PQ = 120 m", "angle QPT = 62°", "angle PQT = 71°"], "PT", "QT", "distance from T to PQ")),
        ("foot beyond", Of(Distance, "PQT is a triangle", ["PQ = 45 m", "angle QPT = 31°", "angle PQT = 115°"], "PT", "distance from T to PQ")),
        ("bounds", Bounded(Of(Distance, "PQT is a triangle", ["PQ = 120 m ± 0.5 m", "angle QPT = 62° ± 0.5°", "angle PQT = 71° ± 0.5°"], "PT", "distance from T to PQ"))),
        ("over a right angle", Bounded(Of(Distance, "PQT is a triangle", ["PQ = 45 m ± 0.5 m", "angle QPT = 31° ± 0.5°", "angle PQT = 90° ± 0.5°"], "PT", "distance from T to PQ"))),
        ("beyond, with bounds", Bounded(Of(Distance, "PQT is a triangle", ["PQ = 45 m ± 0.5 m", "angle QPT = 31° ± 0.5°", "angle PQT = 115° ± 0.5°"], "PT", "distance from T to PQ"))),
        ("two far points", Of(Distance, "PQT is a triangle; PQS is a triangle; T and S are on the same side of PQ", ["PQ = 200 m", "angle QPT = 74°", "angle PQT = 41°", "angle QPS = 48°", "angle PQS = 63°"], "TS")),
        ("two elevations", Of(Distance, "D, B, A are in line; CD is perpendicular to DA", ["AB = 20 m", "angle CAD = 15°", "angle CBD = 18°"], "CD", "AD")),
        ("bearings", Of(Distance, "ABC is a triangle", ["AB = 18 km", "the bearing of B from A = 015°", "BC = 12 km", "the bearing of C from B = 305°"], "AC", "the bearing of C from A")),
        ("square to the track", Of(Distance, "PQT is a triangle", ["PQ = 45 m", "angle QPT = 31°", "angle PQT = 90°"], "PT", "distance from T to PQ")),
        ("measured in part", Of(Triangle, "ABC is a triangle", ["angle ABC = 50° ± 1°", "AB = 5 cm", "BC = 6 cm ± 0.1 cm"], "CA", "BC")),
        .. MeasureCast.Problems,
    ];

    public static Problem Of(string topic, string figure, string[] given, params string[] find) =>
        Drawn.Problem(figure, [.. given.Select(g => g.Split(" = ")).Select(g => (g[0], g[1]))]) with
        {
            Topic = new(topic),
            Find = [.. find.Select(f => GoalReader.Read(f, out _)!)],
        };

    private static Problem Lettered(Problem problem) => problem with { Find = [.. problem.Find.Select((g, i) => g with { Letter = ((char)('a' + i)).ToString() })] };

    private static Problem Bounded(Problem problem) => problem with
    {
        Find = [.. problem.Find.Select((g, i) => g with { Letter = i == 0 ? "a" : "b" }), problem.Find[^1] with { AsTyped = "bounds", Kind = GoalKind.Bounds, Letter = "c" }],
    };

    public static Solution Solved(Problem problem) => new Solver().Solve(problem) is Solved solved ? solved.Solution : throw new InvalidOperationException(problem.ToString());

    public static Verification Verify(Solution solution) => new Referee(RuleBook.Standard).Verify(solution, Topics.Standard.All.First(t => t.Id == solution.Topic).Model);
}
