namespace Explain.Tests.Reading;

public sealed class BadFileTests
{
    private static readonly string[] Geometry =
        ["no-triangle", "flat-triangle", "contradiction", "not-enough-data", "does-not-reach", "rays-do-not-meet", "impossible-angle", "method-does-not-apply", "not-supported"];

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
    public void Each_bad_file_reports_its_code_on_its_lines_or_waits_for_geometry(string file, string lines, string code)
    {
        Problem problem = Problem.Load(Path.Combine(TestFile.Folder("Bad"), file));
        Assert.Equal(file, problem.File);
        if (Geometry.Contains(code)) Assert.Empty(TestFile.Said(problem));
        else Assert.Equal(lines.Split(',').Select(l => $"{l} {code}"), problem.Errors.Select(e => $"{string.Join("-", e.Lines)} {e.Code}"));
    }

    [Fact]
    public void All_sixteen_files_are_there() => Assert.Equal(16, TestFile.Bad.Count());

    [Theory]
    [InlineData("04-missing-unit.yaml", "5: angle QPT: 62 has no unit | did you mean 62°? [missing-unit]")]
    [InlineData("05-wrong-unit.yaml", "5: 62 m is a length, but angle QPT is an angle | write 62°. If you meant the length from P to T, write PT: 62 m [wrong-unit]")]
    [InlineData("06-unknown-key.yaml", "7: fnid is not a key. Did you mean find? | keys: topic, figure, given, find, title, question, parts, names, assume, method, scale, tolerance, accuracy, round, marks [unknown-key]")]
    [InlineData("07-unknown-point.yaml", "11: AF: there is no point F in the figure (points: A, B, C, D and E) | did you mean AE? If F is a new point, say in figure where it is [unknown-point]")]
    [InlineData("09-too-large.yaml", "5: shares: 5 000 000 is more than the limit of 1000 | a program may raise this limit; a problem file may not [too-large]")]
    [InlineData("12-unreadable-number.yaml", "4: 9,5 cm: the decimal sign in a problem file is a point | write 9.5 cm [unreadable-number]", "5: 1O cm: “1O” contains the letter O | did you mean 10 cm? [unreadable-number]")]
    [InlineData("13-given-twice.yaml", "7: BA = 9 cm, but AB = 9.5 cm on line 4. AB and BA are the same length | keep one of them [given-twice]")]
    public void What_is_said_names_the_numbers_and_what_to_do(string file, params string[] said) =>
        Assert.Equal(said, TestFile.Said(Problem.Load(Path.Combine(TestFile.Folder("Bad"), file))));

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
            tolerance: 5
            method: sin rule
            marks: {a: many}
            """;
        Problem problem = TestFile.Read(Text);
        Problem all = Problem.Read(Text, "a.yaml", new ReadingLimits { Errors = 1000 });
        Assert.True(all.Errors.Count >= 25, string.Join("\n", TestFile.Said(all)));
        Assert.Equal(20, problem.Errors.Count);
        Assert.Equal(TestFile.Said(all).Take(20), TestFile.Said(problem));
        Assert.Equal(problem.Errors.Select(e => e.Lines[0]).Order(), problem.Errors.Select(e => e.Lines[0]));
        Assert.Equal(all.Errors.Count, all.Errors.Select(e => (e.Lines, e.Code)).Distinct().Count());
    }
}
