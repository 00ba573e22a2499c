namespace Explain.Tests.Reading;

public sealed class BadFileTests
{
    public static TheoryData<string, string, string> Files
    {
        get
        {
            TheoryData<string, string, string> rows = [];
            foreach ((string file, string lines, string code) in TestFile.Bad) rows.Add(file, lines, code);
            return rows;
        }
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Each_bad_file_is_refused_with_its_code_on_its_lines(string file, string lines, string code)
    {
        Problem problem = Load(file);
        Assert.Equal(file, problem.File);
        // What only a search sees is seen once the topic is solved; until then the file is refused for its topic.
        bool waits = code == ErrorCodes.ImpossibleAngle && Topics.Standard.All.All(t => t.Id != problem.Topic);
        Assert.Equal(waits ? ["1 not-supported"] : lines.Split(',').Select(l => $"{l} {code}"), Refused(problem).Errors.Select(e => $"{Lines(e)} {e.Code}"));
    }

    [Fact]
    public void All_sixteen_files_are_there() => Assert.Equal(16, TestFile.Bad.Count());

    [Theory]
    [InlineData("01-impossible-triangle.yaml", "4,5,6: AB = 9.5 cm, BC = 3 cm and CA = 6 cm do not make a triangle. The longest side must be shorter than the sum of the other two, but 3 + 6 = 9, and 9 is less than 9.5. The arcs drawn from A and B would not meet | check the three lengths [no-triangle]")]
    [InlineData("02-flat-triangle.yaml", "4,5,6: AB = 9.5 cm, BC = 3.5 cm and CA = 6 cm make a flat triangle. 3.5 + 6 = 9.5, so C would lie on AB | check the three lengths [flat-triangle]")]
    [InlineData("03-contradiction.yaml", "7: angle PTQ = 50° contradicts lines 5 and 6. The angles of triangle PQT would add up to 62° + 71° + 50° = 183°, but they must add up to 180° | remove one of the three, or correct it. From lines 5 and 6, angle PTQ is 47° [contradiction]")]
    [InlineData("08-not-enough-data.yaml", "6: a length is needed to find PT | the angles fix the shape of triangle PQT but not its size. Give one of the lengths PQ and QT [not-enough-data]")]
    [InlineData("10-does-not-reach.yaml", "4,5,6: there is no triangle with angle BAC = 38°, AC = 2.5 m and CB = 1.5 m. The shortest distance from C to the line AB is 2.5 × sin 38° = 1.539… m, and CB is shorter than that | CB must be at least 1.54 m (rounded up) [does-not-reach]")]
    [InlineData("11-rays-do-not-meet.yaml", "5,6: the rays from P and Q do not meet: angle QPT + angle PQT = 112° + 71° = 183°, but two angles of a triangle add up to less than 180° | was one of them measured from the other direction along the baseline? 180° − 112° = 68° [rays-do-not-meet]")]
    [InlineData("15-method-does-not-apply.yaml", "2: equal edges need not give equal areas for this shape. AB and BC differ, so no circle touches all sides of ABCD, and no point is equally far from every side | use a regular polygon, a triangle, a rhombus, or another shape with an inscribed circle [method-does-not-apply]")]
    [InlineData("16-not-supported.yaml", "9: the corner D of ABCDEF points inwards. This version follows a tether round the outside of convex shapes only, so it gives no answer | replace the shape by the part of it that the tether meets [not-supported]")]
    [InlineData("04-missing-unit.yaml", "5: angle QPT: 62 has no unit | did you mean 62°? [missing-unit]")]
    [InlineData("05-wrong-unit.yaml", "5: 62 m is a length, but angle QPT is an angle | write 62°. If you meant the length from P to T, write PT: 62 m [wrong-unit]")]
    [InlineData("06-unknown-key.yaml", "7: fnid is not a key. Did you mean find? | keys: topic, figure, given, find, title, question, parts, names, assume, method, scale, tolerance, accuracy, round, marks [unknown-key]")]
    [InlineData("07-unknown-point.yaml", "11: AF: there is no point F in the figure (points: A, B, C, D and E) | did you mean AE? If F is a new point, say in figure where it is [unknown-point]")]
    [InlineData("09-too-large.yaml", "5: shares: 5 000 000 is more than the limit of 1000 | a program may raise this limit; a problem file may not [too-large]")]
    [InlineData("12-unreadable-number.yaml", "4: 9,5 cm: the decimal sign in a problem file is a point | write 9.5 cm [unreadable-number]", "5: 1O cm: “1O” contains the letter O | did you mean 10 cm? [unreadable-number]")]
    [InlineData("13-given-twice.yaml", "7: BA = 9 cm, but AB = 9.5 cm on line 4. AB and BA are the same length | keep one of them [given-twice]")]
    public void What_is_said_names_the_numbers_and_what_to_do(string file, params string[] said) =>
        Assert.Equal(said, Refused(Load(file)).Errors.Select(TestFile.Said));

    [Fact]
    public void A_file_with_25_faults_reports_the_first_20_in_the_order_of_the_lines()
    {
        const string Text = """
            topic: solve a triangle
            figure:
              - ABC is a triangel
              - D is upon AB
              - E is on BC
            given:
              AB: 9,5 cm
              BC: 1O cm
              CA: 6
              AE: 4 furlongs
              BE: 62°
              CE: -3 cm
              angle ABC: 200°
              angle BCA: 40 m
              angle CAB: 61
              height: 3 cm
              EB: 5 cm
              BE: 1e400 cm
              EC: 5 cm
              CE : 6 cm
            fnid: AB
            titel: none
            find:
              - AB
              - BA
              - AZ
              - the moon
              - AC by magic
            round: about right
            accuracy: 0.5
            scale: small
            method: sin rule
            marks: {a: many}
            """;
        Problem problem = TestFile.Read(Text);
        Problem all = Problem.Read(Text, "a.yaml", new ReadingLimits { Errors = 1000 });
        Assert.True(all.Errors.Count == 25, string.Join("\n", TestFile.Said(all)));
        Assert.Equal((20, 5), (problem.Errors.Count, problem.MoreErrors));
        Assert.Equal((20, 5), (Refused(problem).Errors.Count, Refused(problem).More));
        Assert.Equal(TestFile.Said(all).Take(20), TestFile.Said(problem));
        Assert.Equal(problem.Errors.Select(e => e.Lines[0]).Order(), problem.Errors.Select(e => e.Lines[0]));
        Assert.Equal(all.Errors.Count, all.Errors.Select(e => (e.Lines, e.Code)).Distinct().Count());
    }

    private static Problem Load(string file) => Problem.Load(Path.Combine(TestFile.Folder("Bad"), file));

    private static Refused Refused(Problem problem) => Assert.IsType<Refused>(new Solver().Solve(problem));

    /// <summary>4-6 is one error on lines 4 to 6.</summary>
    private static string Lines(ProblemError error) => error.Lines.Count == 1 ? $"{error.Lines[0]}" : $"{error.Lines[0]}-{error.Lines[^1]}";
}
