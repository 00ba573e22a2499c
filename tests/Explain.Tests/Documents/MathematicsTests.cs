using CsCheck;

namespace Explain.Tests.Documents;

public sealed class MathematicsTests
{
    private static readonly MathBuilder Builder = new(new MathStyle(English.UnitedKingdom, Comma: false, Figures: 4), NoClaims.All);
    private static readonly Gen<Expr> Formulas = Gen.Recursive<Expr>((depth, inner) => depth >= 4 ? Leaf : Gen.OneOf(
        Leaf,
        Gen.Select(inner, inner, (a, b) => a + b), Gen.Select(inner, inner, (a, b) => a - b), Gen.Select(inner, inner, (a, b) => a * b), Gen.Select(inner, inner, (a, b) => a / b),
        inner.Select(a => (Expr)new Power(a, 2)), inner.Select(a => (Expr)new Negative(a)), inner.Select(a => (Expr)new Root(new Power(a, 2) + 1))));

    private static Gen<Expr> Leaf => Gen.OneOf(Gen.Int[1, 30].Select(n => (Expr)n), Gen.Int[1, 3].Select(n => (Expr)new Quantity(Exact.Of(new Fractions.Fraction(n, 4)), Unit.None)));

    [Fact]
    public void PlainText_IsReadBackAsTheSameValue() => Formulas.Sample(formula =>
    {
        string text = MathPlain.Write(Builder.Formula(formula)).Replace("½", "(1/2)", StringComparison.Ordinal).Replace("¼", "(1/4)", StringComparison.Ordinal).Replace("¾", "(3/4)", StringComparison.Ordinal);
        double? expected = Number(formula), read = ReadBack.Value(text);
        Assert.NotNull(read);
        if (expected is { } value) Assert.Equal(value, read.Value, 1e-9 * (1 + Math.Abs(value)));
    }, iter: 3000);

    [Theory]
    [InlineData("a = b = (2x + 16)°", @"a=b=(2x+16)^\circ")]
    [InlineData("angle ABC = 52°", @"\text{angle }ABC=52^\circ")]
    [InlineData("AB × sin ABC ÷ 2 = 3 cm", @"\frac{AB\times\sin ABC}{2}=3\text{ cm}")]
    public void Tex_IsThatOfATextbook(string statement, string tex) =>
        Assert.Equal(tex, MathTex.Write(Builder.Compare((Compare)StatementGrammar.Read(statement)!)));

    [Fact]
    public void Tex_KeepsTheSizeOfNestedFractions()
    {
        Expr one = 1, x = new Letter("x"), y = new Letter("y");
        Assert.Equal(@"\frac{1}{\dfrac{1}{x}+\dfrac{1}{y}}", MathTex.Write(Builder.Formula(one / (one / x + one / y))));
    }

    [Theory]
    [InlineData("9999", "9999")]
    [InlineData("12500", "12\u202F500")]
    [InlineData("−1234567.891", "−1\u202F234\u202F567.891")]
    public void LongNumbers_AreGroupedInThrees(string digits, string printed) => Assert.Equal(printed, MathPlain.Write(new MathNumber(digits, Continues: false)));

    [Fact]
    public void ADecimalComma_IsNoListComma()
    {
        MathBuilder comma = new(new MathStyle(English.UnitedKingdom, Comma: true, Figures: 4), NoClaims.All);
        MathPiece half = comma.Formula(new Quantity(Exact.Of(new Fractions.Fraction(31, 2)), Unit.None));
        Assert.Equal("15,5", MathPlain.Write(half));
        Assert.Equal("15{,}5", MathTex.Write(half));
    }

    private static double? Number(Expr formula) => (Evaluator.Evaluate(formula) as Evaluated)?.Value.Number;
}
