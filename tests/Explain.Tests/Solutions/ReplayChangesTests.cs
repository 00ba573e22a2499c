namespace Explain.Tests.Solutions;

/// <summary>Changes that do not fit a solution are faults of the program; values that no figure has are not.</summary>
public sealed class ReplayChangesTests
{
    private static readonly Solution Mast = Plays.Solved("mast");

    private static readonly ClaimId Jk = Mast.Given("JK"), Km = Mast["KM"].Only!.From, Foot = Mast.Steps.First(s => s is Instruction).Id;

    private static readonly (string Fault, Change[] Changes)[] Bad =
    [
        ("no such claim", [new GivenIs(new("g99"), Plays.Value("96 m"))]),
        ("no given", [new GivenIs(Km, Plays.Value("96 m"))]),
        ("a given without a value", [new GivenIs(Mast.Premises[0].Id, Plays.Value("96 m"))]),
        ("a length as an angle", [new GivenIs(Jk, Plays.Value("96°"))]),
        ("a length as a number", [new GivenIs(Jk, 96)]),
        ("a length as an area", [new GivenIs(Jk, new Power(Plays.Value("96 m"), 2))]),
        ("a given by a claim", [new GivenIs(Jk, new ValueOf(Km))]),
        ("two changes of one claim", [new GivenIs(Jk, Plays.Value("96 m")), new GivenWithin(Jk, Plays.Value("95 m"), Plays.Value("97 m"))]),
        ("a range upside down", [new GivenWithin(Jk, Plays.Value("97 m"), Plays.Value("95 m"))]),
        ("a range of another kind", [new GivenWithin(Jk, Plays.Value("95°"), Plays.Value("97°"))]),
        ("an end that is not rational", [new GivenWithin(Jk, Plays.Value("√2 m"), Plays.Value("97 m"))]),
        ("a value of a given", [new ValueIs(Jk, Value.Of(Exact.Of(96), Unit.Metre))]),
        ("a value of an instruction", [new ValueIs(Foot, Value.Of(Exact.Of(96), Unit.Metre))]),
        ("a value of another kind", [new ValueIs(Km, Value.Of(Exact.Of(96), Unit.Degree))]),
        ("a value that is not exact", [new ValueIs(Km, Mast["KM"].Only!.Value!)]),
        ("a formula of a given", [new FormulaIs(Jk, Plays.Value("96 m"))]),
        ("a formula of another kind", [new FormulaIs(Km, Plays.Value("96°"))]),
        ("a formula in what is not known", [new FormulaIs(Km, QuantityGrammar.Read("JZ")!)]),
        ("a formula in what is found later", [new FormulaIs(Km, new ValueOf(Mast["distance from M to JK"].Only!.From))]),
    ];

    public static TheoryData<string> Faults => [.. Bad.Select(b => b.Fault)];

    [Theory]
    [MemberData(nameof(Faults))]
    public void AChangeThatDoesNotFit_IsAFaultOfTheProgram(string fault) =>
        Assert.Throws<ArgumentException>(() => Mast.Replay([.. Bad.First(b => b.Fault == fault).Changes]));

    [Theory]
    [InlineData("JK", "0 m")]
    [InlineData("JK", "-3 m")]
    [InlineData("angle MJK", "0°")]
    [InlineData("angle MJK", "180°")]
    public void AValueThatNoFigureHas_IsOutsideTheDomain(string of, string value) =>
        Assert.Equal([new Broken(Mast.Given(of), Break.OutsideDomain)], Mast.Replay(new GivenIs(Mast.Given(of), Minus(value))).Broken);

    [Fact]
    public void AnotherUnitOfTheSameKind_IsTheSameMeasurement()
    {
        Replay metres = Mast.Replay(new GivenIs(Jk, Plays.Value("100 m"))), feet = Mast.Replay(new GivenIs(Jk, Plays.Value("10000 cm")));
        Assert.Equal(metres[Km], feet[Km]);
    }

    [Fact]
    public void AnAnswer_IsFoundByEverySpellingOfWhatWasAsked()
    {
        Assert.Same(Mast["KM"], Mast["KM"]);
        Assert.Equal(Mast["KM"], Mast["MK"]);
        Assert.Equal(Mast["distance from M to JK"], Mast["the distance from M to KJ"]);
        Assert.Equal(GoalKind.Bounds, Mast["bounds of distance from M to JK"].For.Kind);
        Assert.Throws<ArgumentException>(() => Mast["JK"]);
        Assert.Throws<ArgumentException>(() => Mast["the height"]);
    }

    private static Expr Minus(string value) => value.StartsWith('-') ? new Negative(Plays.Value(value[1..])) : Plays.Value(value);
}
