namespace Explain.Tests.Solutions;

/// <summary>A learner's own value or formula at one step, and what follows from it.</summary>
public sealed class ReplayFollowingTests
{
    private static readonly Solution Mast = Plays.Solved("mast");

    private static ClaimId Of(string find) => Mast[find].Only!.From;

    private static double Sin(double degrees) => Math.Sin(degrees * Math.PI / 180);

    [Fact]
    public void AValueOfSomebodysOwn_IsFollowedThrough()
    {
        Replay replay = Mast.Replay(new ValueIs(Of("JM"), Value.Of(Exact.Of(new Fractions.Fraction(1058, 10)), Unit.Metre)));
        Assert.Equal(105.8, replay[Of("JM")]!.Number);
        Assert.Equal(105.8 * Sin(58), replay[Of("distance from M to JK")]!.Number, 1e-12);
        Assert.Equal(96 * Sin(58) / Sin(56), replay[Of("KM")]!.Number, 1e-12);
        Assert.All(replay.Broken, b => Assert.Equal(Break.StatementFails, b.Why));
        Assert.Contains(Mast.Steps.Where(s => replay.Broken.Any(b => b.Claim == s.Id)), s => s.Why.Rule.Name is "as-given" or "same-quantity");
    }

    [Fact]
    public void AValueInAnotherUnit_IsTheSameValue()
    {
        Value metres = Value.Of(Exact.Of(98), Unit.Metre), centimetres = Value.Of(Exact.Of(9800), Unit.Centimetre);
        Assert.Equal(Numbers(metres), Numbers(centimetres));

        static double[] Numbers(Value value) => [.. Mast.Replay(new ValueIs(Of("JM"), value)).Values.Select(v => v.Value.Number)];
    }

    [Fact]
    public void ASlip_GivesWhatItGives_AndIsFollowedThrough()
    {
        Symbol k = Symbol("angle MKJ"), m = Symbol("angle JMK");
        Expr inverted = new Quotient(new Product(Symbol("JK"), new Apply(Function.Sine, m)), new Apply(Function.Sine, k));
        Replay replay = Mast.Replay(new FormulaIs(Of("JM"), inverted));
        Assert.Equal(96 * Sin(56) / Sin(66), replay[Of("JM")]!.Number, 1e-12);
        Assert.Equal(96 * Sin(56) / Sin(66) * Sin(58), replay[Of("distance from M to JK")]!.Number, 1e-12);
    }

    [Fact]
    public void ASlip_MayLeanOnQuantitiesThatTheRightFormulaDoesNotUse()
    {
        Expr other = new Quotient(new Product(Symbol("JK"), new Apply(Function.Sine, Symbol("angle MKJ"))), new Apply(Function.Sine, Symbol("angle JMK")));
        Assert.Equal(96 * Sin(66) / Sin(56), Mast.Replay(new FormulaIs(Of("KM"), other))[Of("KM")]!.Number, 1e-12);
    }

    [Fact]
    public void ASlipThatHasNoValue_IsOutsideTheDomain_AndWhatRestsOnItHasNone()
    {
        Expr impossible = new Product(Symbol("JK"), new Apply(Function.Sine, new Apply(Function.ArcSine, 2)));
        Replay replay = Mast.Replay(new FormulaIs(Of("JM"), impossible));
        Assert.Equal([new Broken(Of("JM"), Break.OutsideDomain)], replay.Broken);
        Assert.Null(replay[Of("distance from M to JK")]);
    }

    [Fact]
    public void AnEquation_IsSolvedAgain()
    {
        Solution chase = Chase();
        ClaimId x = new("s1"), angle = new("s2");
        Assert.Equal((30.0, 76.0), Found(chase.Replay()));
        Assert.Equal((8.0, 36.0), Found(chase.Replay(new GivenIs(new("g1"), Plays.Value("(2x + 20)°")), new GivenIs(new("g2"), Plays.Value("(x + 28)°")))));
        Assert.Equal((25.0, 66.0), Found(chase.Replay(new ValueIs(x, Value.Of(Exact.Of(25), Unit.None)))));
        Assert.Equal([new Broken(x, Break.OutsideDomain)], chase.Replay(new GivenIs(new("g2"), Plays.Value("(2x + 46)°"))).Broken);

        (double, double) Found(Replay replay) => (replay[x]!.Number, replay[angle]!.Number);
    }

    [Fact]
    public void ACountThatShapesTheSteps_IsSolvedAfresh()
    {
        Solution two = Chase();
        Premise count = new(new("g3"), new HowMany(RulePhrases.Triangles(2), [], 2), Source.Given);
        Solution counted = two with { Premises = two.Premises.With(count) };
        Assert.Empty(counted.Replay(new GivenIs(count.Id, 2)).Broken);
        Assert.Equal([new Broken(count.Id, Break.OtherShape)], counted.Replay(new GivenIs(count.Id, 3)).Broken);
    }

    private static Symbol Symbol(string of) => QuantityGrammar.Read(of)!;

    /// <summary>angle ABC = (2x + 16)° and angle PAB = (x + 46)° are equal, so x = 30 and each is 76°.</summary>
    private static Solution Chase()
    {
        Symbol abc = Symbol("angle ABC"), pab = Symbol("angle PAB"), x = new Letter("x");
        ClaimId g1 = new("g1"), g2 = new("g2"), s1 = new("s1"), s2 = new("s2");
        Premise[] premises = [new(g1, Compare.Equal(abc, Plays.Value("(2x + 16)°")), Source.Given), new(g2, Compare.Equal(pab, Plays.Value("(x + 46)°")), Source.Given)];
        Algebra solved = new(s1, Compare.Equal(x, 30), new(new("equal-angles"), [], [g1, g2]), Compare.Equal(new ValueOf(g1), new ValueOf(g2)), x, []);
        Calculation found = new(s2, Compare.Equal(abc, new ValueOf(g1)), new(new("substitution"), [], [g1, s1]), [], abc, new ValueOf(g1), [new(x, new ValueOf(s1))], Value.Of(Exact.Of(76), Unit.Degree));
        return new(Problem.About(), new("chase"), [.. premises], [new(null, [], [new(PassageUse.Working, [solved, found])], [])], [], [], [], Verification.NotRun);
    }
}
