namespace Explain.Generators.Tests.Rules;

public class RuleTests
{
    private const string Source = """
        using Explain;
        using static Explain.DegreeTrigonometry;
        namespace Demo;

        [Rule("foot-between", When = ["Q is acute: angle PQR", "angle PRQ is acute", "base: QR"], Then = "F is between Q and R", Roles = ["foot: F"], Source = "Elements I.17")]
        [Rule("lines-and-ratios", When = ["AB : BC = 1 : 2"], Then = "B is on AC", Source = "common practice, no source", Marks = 3)]
        public static partial class Triangles
        {
            [Rule("sine-rule", When = ["ABC is a triangle"], Source = "common practice, no source", Marks = 2)]
            [Relation]
            private static (double, double) SineRule([Quantity("BC")] double side, [Quantity("angle BAC")] double opposite,
                [Quantity("CA")] double other, [Quantity("angle ABC")] double otherOpposite) => (side / Sin(opposite), other / Sin(otherOpposite));

            [Rule("angle-sum", When = ["ABC is a triangle"], Source = "common practice, no source")]
            [Relation]
            private static (double, double) Sum([Quantity("angle BAC")] double a, [Quantity("angle ABC")] double b, [Quantity("angle BCA")] double c)
            {
                return (a + b + c, 2 * 90);
            }
        }
        """;

    private static readonly Items<Rule> All = (Items<Rule>)Sample.Of(Source).Run().Load().GetType("Demo.Triangles+Book")!.GetProperty("All")!.GetValue(null)!;

    [Fact]
    public void Deductions_come_first_then_relations_in_the_order_of_the_source() =>
        Assert.Equal(["foot-between", "lines-and-ratios", "sine-rule", "angle-sum"], All.Select(r => r.Id.Name));

    [Fact]
    public void A_named_condition_is_a_role_and_its_pattern_a_premise()
    {
        Rule rule = All[0];
        Assert.Equal(["Q is acute: angle PQR", "angle PRQ is acute", "QR"], rule.When);
        Assert.Equal([new RolePattern("base", "QR", true), new RolePattern("foot", "F", false)], rule.Roles);
        Assert.Equal("F is between Q and R", rule.Then);
        Assert.Equal(("Elements I.17", 1), (rule.Source, rule.Marks));
        Assert.Null(rule.Law);
    }

    [Fact]
    public void A_ratio_is_no_name() => Assert.Equal(["AB : BC = 1 : 2"], All[1].When);

    [Fact]
    public void A_relation_has_its_two_sides_as_trees()
    {
        Rule rule = All[2];
        Assert.Equal(new Equation(
            new Quotient(new Letter("side"), new Apply(Function.Sine, new Letter("opposite"))),
            new Quotient(new Letter("other"), new Apply(Function.Sine, new Letter("otherOpposite")))), rule.Law);
        Assert.Equal([new("side", "BC", false), new("opposite", "angle BAC", false), new("other", "CA", false), new("otherOpposite", "angle ABC", false)], rule.Quantities);
        Assert.Equal(rule.Quantities, rule.Roles);
        Assert.Equal(2, rule.Marks);
    }

    [Fact]
    public void Plain_numbers_beside_angles_are_degrees() => Assert.Equal(
        new Equation(new Sum(new Sum(new Letter("a"), new Letter("b")), new Letter("c")), new Product(2, Expr.Degrees(90))), All[3].Law);
}
