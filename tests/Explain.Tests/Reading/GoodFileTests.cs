using System.Text.Json;

namespace Explain.Tests.Reading;

public sealed class GoodFileTests
{
    public static TheoryData<string> Files => [.. TestFile.Good.Concat(TestFile.Bad.Select(b => Path.Combine(TestFile.Folder("Bad"), b.File)))];

    [Fact]
    public void Good_files_are_read_without_an_error()
    {
        foreach (string file in TestFile.Good) Assert.Empty(TestFile.Said(Problem.Load(file)));
        Assert.Equal(8, TestFile.Good.Count());
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void JSON_of_the_same_structure_is_the_same_problem(string file)
    {
        Problem yaml = Problem.Load(file);
        string json = Json(YamlFile.Read(TestFile.Text(file), ReadingLimits.Default).Root!);
        foreach (string text in (string[])[json, json.Replace(",\"", ",\n  \"", StringComparison.Ordinal), "\uFEFF" + json])
        {
            Assert.Equal(Plain(yaml), Plain(Problem.Read(text, "a.json")));
            Assert.Equal(Plain(yaml), Plain(Problem.Read(text)));
        }
    }

    [Fact]
    public void The_mast_is_read_whole()
    {
        Problem mast = Problem.Load(TestFile.Good.Single(f => f.Contains("03-", StringComparison.Ordinal)));
        Assert.Equal(new TopicId("inaccessible distance"), mast.Topic);
        Assert.Equal("PQT is a triangle", StatementGrammar.Write(mast.Figure.Single().Says, English.UnitedKingdom));
        Assert.Equal(["120 m", "62°", "71°"], mast.Given.Select(g => g.Typed));
        Assert.Equal([18, 19, 20], mast.Given.Select(g => g.At.Line));
        Assert.Equal(new Quantity(Exact.Of(new Fractions.Fraction(1, 2)), Unit.Metre), mast.Given[0].Within);
        Assert.Equal(["a", "a", "b", "c", "d"], mast.Find.Select(g => g.Letter));
        Assert.Equal([GoalKind.Value, GoalKind.Value, GoalKind.Value, GoalKind.Bounds, GoalKind.ByMethod], mast.Find.Select(g => g.Kind));
        Assert.Equal("scale drawing", mast.Find[4].Method);
        Assert.Equal(new DrawingScale(Of(1, Unit.Centimetre), Of(10, Unit.Metre), "1 cm to 10 m"), mast.Scale);
        Assert.Equal((Of(1, Unit.Millimetre), Of(1, Unit.Degree)), ((Quantity)mast.LengthTolerance!, (Quantity)mast.AngleTolerance!));
        Assert.Equal([4, 2, 4, 4], mast.Marks.Select(m => m.Marks));
        Assert.Equal(["the track", "the radio mast"], mast.Names.Select(n => n.Is));
        Assert.StartsWith("P and Q are gateposts 120 m apart", mast.Question, StringComparison.Ordinal);
    }

    [Fact]
    public void Shares_first_cuts_and_tethers_are_kept()
    {
        Problem octagon = Problem.Load(TestFile.Good.Single(f => f.Contains("04-", StringComparison.Ordinal)));
        Assert.Equal([("shares", "3"), ("shares", "7"), ("first cut", "A")], octagon.Extras.Select(e => (e.Key, e.Text)));
        Assert.Equal(new RoundingRule(null, new(RoundingKind.SignificantFigures, 3) { Exact = true }), octagon.Round.Single());
        Problem tether = Problem.Load(TestFile.Good.Single(f => f.Contains("06-", StringComparison.Ordinal)));
        Assert.Equal(Of(9, Unit.Metre), tether.Extras.Single().Value);
        Assert.Equal(PlaceKind.TetherOutside, Assert.IsType<Place>(tether.Figure[1].Says).Kind);
    }

    [Fact]
    public void Every_order_of_givens_and_of_keys_is_the_same_problem()
    {
        string[] givens = ["  PQ: 120 m ± 0.5 m", "  angle QPT: 62°", "  angle PQT: 71°", "  PT: (x + 3) m"];
        string Of(IEnumerable<string> given, bool figureLast) => string.Join("\n", figureLast
            ? ["find: x", "given:", .. given, "figure: PQT is a triangle"]
            : (string[])["figure: PQT is a triangle", "given:", .. given, "find: x"]);
        HashSet<string> read = [];
        foreach (string[] order in Orders(givens))
            foreach (bool last in (bool[])[false, true])
            {
                Problem problem = TestFile.Read(Of(order, last));
                Assert.Empty(TestFile.Said(problem));
                read.Add(string.Join(";", problem.Given.Select(g => $"{g.Of}={g.Typed}={g.Within}").Order(StringComparer.Ordinal)) + problem.Find.Single().Wanted);
            }

        Assert.Single(read);
    }

    private static Quantity Of(int number, Unit unit) => new(Exact.Of(number), unit);

    private static IEnumerable<string[]> Orders(string[] of) =>
        of.Length == 1 ? [of] : of.SelectMany(first => Orders([.. of.Where(o => o != first)]).Select(rest => (string[])[first, .. rest]));

    /// <summary>The problem without its places.</summary>
    private static object Plain(Problem p) => new
    {
        Errors = string.Join("\n", p.Errors.Select(e => e.Code).Order(StringComparer.Ordinal)),
        Problem = p with
        {
            File = null, Errors = [], EntryErrors = [], Keys = [], Figure = [.. p.Figure.Select(f => f with { At = default })], Given = [.. p.Given.Select(g => g with { At = default })],
            Find = [.. p.Find.Select(g => g with { At = default })], Names = [.. p.Names.Select(n => n with { At = default })], Extras = [.. p.Extras.Select(e => e with { At = default })],
        },
    };

    private static string Json(FileNode node) => node switch
    {
        FileText text => JsonSerializer.Serialize(text.Is),
        FileList list => "[" + string.Join(",", list.Of.Select(Json)) + "]",
        FileMap map => "{" + string.Join(",", map.Of.Select(e => JsonSerializer.Serialize(e.Key.Is) + ":" + Json(e.Value))) + "}",
        _ => "",
    };
}
