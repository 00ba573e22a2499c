namespace Explain.Generators.Tests.Explained;

public class FormulaTests
{
    private static readonly Letter A = new("a"), B = new("b"), C = new("C"), N = new("n"), X = new("x"), Y = new("y");

    [Theory]
    [InlineData("a * b * b / a / b", "((((a*b)*b)/a)/b)")]
    [InlineData("Math.Sqrt(a * a - -b * b)", "√((a*a)-(-b*b))")]
    [InlineData("a * Math.Pow(b, 3) / b / b / (0.5 * a)", "((((a*b^3)/b)/b)/(1/2*a))")]
    [InlineData("a * Sin(180 - C) + b * Cos(30) * Tan(C / 2)", "((a*Sine((180°-C)))+((b*Cosine(30°))*Tangent((C/2))))")]
    [InlineData("a * Sin(Asin(b / a) + Acos(0.5) - Atan(1))", "(a*Sine(((ArcSine((b/a))+ArcCosine(1/2))-ArcTangent(1))))")]
    [InlineData("2 * Math.PI * a * (C / 360)", "(((2*π)*a)*(C/360°))")]
    [InlineData("a * Sin((n - 2) * 180.0 / n)", "(a*Sine((((n-2)*180°)/n)))")]
    [InlineData("a * (double)n + (+b) * 1e1 * 1_000.5D", "((a*n)+((b*10)*2001/2))")]
    public void An_expression_becomes_a_tree_in_the_order_of_CSharp(string expression, string tree) =>
        Assert.Equal(tree, Trees.Write(((ExplainedResult)Method.Body($"return {expression}; // r").Formula().Lines[0]).Is));

    [Fact]
    public void A_local_made_of_plain_numbers_is_an_angle_where_it_is_used_as_one()
    {
        ExplainedFormula formula = Method.Body("""
            double centre = 360.0 / n; // one share of a turn
            double half = centre / 2;  // half of it
            return a * Sin(half);      // the half side
            """).Formula();
        Assert.Equal([Unit.Degree, Unit.Degree], formula.Lines.OfType<ExplainedValue>().Select(v => v.Unit));
        Assert.Equal("(360°/n)", Trees.Write(((ExplainedValue)formula.Lines[0]).Is));
    }

    [Fact]
    public void Each_way_of_an_if_becomes_a_branch()
    {
        ExplainedFormula formula = Method.Body("""
            if (a > b && n != 3)     // the longer
            {
                double y = a - b;    // what is over
                return y;            // so this
            }
            else if (C == 90) return a; // right-angled
            return b;                // the other
            """).Formula();
        ExplainedBranch first = (ExplainedBranch)formula.Lines[0], second = (ExplainedBranch)first.Otherwise[0];
        Assert.Equal(new ExplainedBranch([new(A, Relation.Greater, B), new(N, Relation.Different, 3)],
            [new ExplainedValue(Y, A - (Expr)B, Unit.Metre, new WrittenReason("what is over")), new ExplainedResult(X, Y, Unit.Metre, new WrittenReason("so this"))],
            first.Otherwise, new WrittenReason("the longer")), first);
        Assert.Equal(new ExplainedBranch([new(C, Relation.Equal, Expr.Degrees(90))], [new ExplainedResult(X, A, Unit.Metre, null)], [], new WrittenReason("right-angled")), second);
        Assert.Equal(new ExplainedResult(X, B, Unit.Metre, new WrittenReason("the other")), formula.Lines[1]);
    }

    [Fact]
    public void A_choice_becomes_a_branch_with_a_reason_for_each_way()
    {
        ExplainedFormula formula = Method.Body("""
            double y = a > b ? a : b;  // the longer
            return (a < b    // compare
                ? y - a      // first
                : y - b);    // second
            """).Formula();
        Assert.Equal(new ExplainedBranch([new(A, Relation.Greater, B)], [new ExplainedValue(Y, A, Unit.Metre, null)], [new ExplainedValue(Y, B, Unit.Metre, null)], new WrittenReason("the longer")), formula.Lines[0]);
        Assert.Equal(new ExplainedBranch([new(A, Relation.Less, B)],
            [new ExplainedResult(X, Y - (Expr)A, Unit.Metre, new WrittenReason("first"))], [new ExplainedResult(X, Y - (Expr)B, Unit.Metre, new WrittenReason("second"))],
            new WrittenReason("compare")), formula.Lines[1]);
    }

    [Fact]
    public void Calls_of_other_explained_methods_become_lines_that_fold()
    {
        Sample sample = Method.In("""
            [Explained] [return: Symbol("A"), Unit("m²")] public static double Circle([Unit("m")] double r) => Math.PI * r * r; // circle
            [Explained] [return: Symbol("A"), Unit("m²")] public static double Ring([Unit("m")] double R, [Unit("m")] double r)
            {
                double inner = Circle(r);       // take it away
                return Circle(R) - inner + Other.Circle(0) - Circle(R + r); // the rest
            }
            """).With("Other.cs", """
            using Explain;
            internal static partial class Other { [Explained] [return: Symbol("A"), Unit("m²")] internal static double Circle([Unit("m")] double @in) => 3 * @in * @in; /* rough */ // rough
            }
            """);
        Items<ExplainedLine> lines = sample.Formula("Ring").Lines;
        ExplainedFormula circle = sample.Formula("Circle"), rough = sample.Formula("Circle", "Other");
        Letter big = new("R"), small = new("r"), inner = new("inner");
        Assert.Equal(
        [
            new ExplainedCall(inner, circle, [small], new WrittenReason("take it away")),
            new ExplainedCall(new("A₂"), circle, [big], null),
            new ExplainedCall(new("A₃"), rough, [new Quantity(Exact.Zero, Unit.Metre)], null),
            new ExplainedCall(new("A₄"), circle, [big + (Expr)small], null),
            new ExplainedResult(new("A"), new Difference(new Sum(new Difference(new Letter("A₂"), inner), new Letter("A₃")), new Letter("A₄")), Unit.Metre.To(2), new WrittenReason("the rest")),
        ], lines);
        Assert.Equal("in", rough.Parameters[0].Name);
    }
}
