using System.Reflection;

namespace Explain.Generators.Tests.Explained;

public class ExplainedTests
{
    private const string Source = """"
        using System;
        using Explain;
        using static Explain.DegreeTrigonometry;

        namespace Demo;

        public static partial class Paths
        {
            /// <summary>Area of a path of constant width &lt;w&gt; round <paramref name="pondRadius"/></summary>
            [Explained]
            [return: Symbol("A"), Unit("m²")]
            public static double PathArea(
                [Symbol("r"), Unit("m")] double pondRadius,
                [Symbol("w"), Unit("m")] double width)
            {
                Require.That(width > 0);                      // the path has a width
                double R = pondRadius + width;                // the outer edge is a circle
                double whole = Math.PI * R * R;               // rule: area-of-circle radius=R
                double pond = Math.PI * pondRadius * pondRadius;   // rule: area-of-circle radius=r
                return whole - pond;                          // what remains {{ < \ "quoted"
            }
        }
        """";

    private static readonly Letter R = new("R"), Small = new("r"), W = new("w"), Whole = new("whole"), Pond = new("pond"), A = new("A");
    private static readonly Expr Pi = new Quantity(Exact.Pi, Unit.None);
    private static readonly Assembly Demo = Sample.Of(Source).Run().Load();

    [Fact]
    public void A_method_becomes_lines_with_reasons_in_the_order_of_CSharp()
    {
        ExplainedFormula formula = (ExplainedFormula)Demo.GetType("Demo.Paths+Formulas")!.GetProperty("PathArea")!.GetValue(null)!;
        Unit area = Unit.Metre.To(2);
        Assert.Equal(new ExplainedFormula("PathArea", "Area of a path of constant width <w> round pondRadius",
            [new("pondRadius", Small, Unit.Metre), new("width", W, Unit.Metre)], A, area,
            [
                new ExplainedRequirement([new(W, Relation.Greater, new Quantity(Exact.Zero, Unit.Metre))], new WrittenReason("the path has a width")),
                new ExplainedValue(R, Small + (Expr)W, Unit.Metre, new WrittenReason("the outer edge is a circle")),
                new ExplainedValue(Whole, Pi * R * R, area, new RuleReason(new("area-of-circle"), [new("radius", R)])),
                new ExplainedValue(Pond, Pi * Small * Small, area, new RuleReason(new("area-of-circle"), [new("radius", Small)])),
                new ExplainedResult(A, Whole - (Expr)Pond, area, new WrittenReason("what remains {{ < \\ \"quoted\"")),
            ]), formula);
        Assert.Equal((Items<ExplainedFormula>)[formula], Demo.GetType("Demo.Paths")!.GetProperty("Rules")!.GetValue(null));
    }

    [Fact]
    public void The_twin_has_the_method_s_own_value()
    {
        Explained<double> worked = Work(3.5, 1.5);
        double plain = (double)Demo.GetType("Demo.Paths")!.GetMethod("PathArea")!.Invoke(null, [3.5, 1.5])!;
        Assert.Equal(BitConverter.DoubleToInt64Bits(plain), BitConverter.DoubleToInt64Bits(worked.Value));
        Assert.Equal([new(Exact.Of(new Fractions.Fraction(7, 2)), Unit.Metre), new(Exact.Of(new Fractions.Fraction(3, 2)), Unit.Metre)], worked.Arguments);
    }

    [Fact]
    public void A_requirement_that_does_not_hold_is_named() => Assert.Equal("width > 0", Assert.Throws<ArgumentException>(() => Work(1, -1)).Message);

    private static Explained<double> Work(double radius, double width)
    {
        try
        {
            return (Explained<double>)Demo.GetType("Demo.Paths+Worked")!.GetMethod("PathArea")!.Invoke(null, [radius, width])!;
        }
        catch (TargetInvocationException e)
        {
            throw e.InnerException!;
        }
    }
}
