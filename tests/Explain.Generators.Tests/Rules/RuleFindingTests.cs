namespace Explain.Generators.Tests.Rules;

public class RuleFindingTests
{
    private static Sample Relation(string method, string body = "(a, a)", string type = "(double, double)", string parameters = "[Quantity(\"AB\")] double a") => Sample.Of($$"""
        using System; using Explain; using static Explain.DegreeTrigonometry;
        internal static partial class Rules
        {
            {{method}} static {{type}} R({{parameters}}) => {{body}};
        }
        """);

    private const string Whole = "[Rule(\"r\", Source = \"s\")] [Relation]";

    [Fact]
    public void The_class_must_be_partial() => Relation(Whole).Edit("Test.cs", "partial ", "").Run()
        .Says("EXPL001 Test.cs(4) [Rule(\"r\", Source = \"s\")]: Rules must be partial (and not local to a file), so that what belongs to r can be written beside it; add 'partial'");

    [Fact]
    public void A_class_local_to_a_file_cannot_have_a_second_part() => Relation(Whole).Edit("Test.cs", "internal static", "file static").Run()
        .Says("EXPL001 Test.cs(4) [Rule(\"r\", Source = \"s\")]: Rules must be partial (and not local to a file), so that what belongs to r can be written beside it; add 'partial'");

    [Fact]
    public void A_rule_without_source_is_noticed() => Relation("[Rule(\"r\")] [Relation]").Run()
        .Says("EXPL206 Test.cs(4) [Rule(\"r\")]: the rule r has no source; say where it comes from with Source = \"…\"");

    [Fact]
    public void A_rule_needs_a_numeric_meaning()
    {
        Relation("[Rule(\"r\", Source = \"s\")]").Run().Says("EXPL210 Test.cs(4) [R]: the rule r could not be tested in a figure: mark the method [Relation] as well");
        Relation(Whole, parameters: "double a").Run().Says("EXPL210 Test.cs(4) [a]: the rule r could not be tested in a figure: say with [Quantity(\"…\")] what a stands for");
        Sample.Of("[Explain.Rule(\"r\", Source = \"s\")] static partial class Rules;").Run()
            .Says("EXPL210 Test.cs(1) [Explain.Rule(\"r\", Source = \"s…]: the rule r could not be tested in a figure: a deduction needs Then");
    }

    [Theory]
    [InlineData("Roles = [\"F\"]", "the role \"F\" has no name; write it as \"name: pattern\"")]
    [InlineData("Roles = [\"a: F\"], When = [\"a: G is on PQ\"]", "the role a is named twice, or is 'steps', which every rule has; give it another name")]
    [InlineData("Roles = [\"steps: F\"]", "the role steps is named twice, or is 'steps', which every rule has; give it another name")]
    public void Roles_have_names_of_their_own(string roles, string says) =>
        Sample.Of($"[Explain.Rule(\"r\", Then = \"F is on PQ\", Source = \"s\", {roles})] static partial class Rules;").Run().Says("EXPL212 Test.cs(1) [Explain.Rule(\"r\", Then = \"F i…]: rule r: " + says);

    [Fact]
    public void An_id_has_a_form() => Relation("[Rule(\"My rule\", Source = \"s\")] [Relation]").Run().Says($"EXPL212 Test.cs(4) [Rule(\"My rule\", Source = \"s\")]: rule My rule: {Ids.Form}");

    [Fact]
    public void A_relation_is_a_static_pair_of_doubles()
    {
        Relation(Whole, "a", "double").Run().Says("EXPL011 Test.cs(4) [R]: R cannot be explained: a relation is a static method of doubles that returns (double, double)");
        Relation(Whole, "(a, a)", parameters: "[Quantity(\"AB\")] int a").Run().Says("EXPL011 Test.cs(4) [a]: R cannot be explained: the parameter a of a relation must be a double");
    }

    [Theory]
    [InlineData("Make(a)", "EXPL002 Test.cs(4) [R]: 'R' cannot be explained: a relation returns one pair of expressions and does nothing else")]
    [InlineData("(a % 2, a)", "EXPL002 Test.cs(4) [a % 2]: 'a % 2' cannot be explained: a formula is made of parameters, local values, numbers, + - * / and listed functions; move the rest to where the method is called")]
    [InlineData("(Math.Floor(a), a)", "EXPL003 Test.cs(4) [Math.Floor(a)]: Math.Floor is not a listed function; use Math.Sqrt, Math.Pow with a whole exponent from 2 to 100, and Sin, Cos, Tan, Asin, Acos, Atan of DegreeTrigonometry")]
    [InlineData("(1 / 2 * a, a)", "EXPL016 Test.cs(4) [1 / 2]: '1 / 2' is not calculated in doubles, so C# drops the remainder and the formula would not; write one number with .0, or cast it to double")]
    public void A_law_is_made_of_what_can_be_explained(string body, string says) =>
        Relation(Whole, body).Run().Says(says);
}
