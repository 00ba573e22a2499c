namespace Explain.Generators.Tests.Phrases;

public class PhraseFindingTests
{
    [Fact]
    public void A_parameter_must_be_printable() => Phrase("public static partial Phrase P(double x, Items<double> list, Point? at, ref int n);").Run().Says(
        Unprintable("x", "double"), Unprintable("list", "Explain.Items<double>"), Unprintable("at", "Explain.Point?"), Unprintable("n", "int"));

    [Theory]
    [InlineData("public static Phrase P() => null!;")]
    [InlineData("public partial Phrase P();")]
    [InlineData("public static partial string P();")]
    public void A_phrase_is_a_static_partial_method(string method) => Phrase(method).Run()
        .Says($"EXPL212 Test.cs(4) [P]: phrase p: declare it as a static partial method without a body that returns Phrase");

    [Fact]
    public void An_id_has_a_form() => Phrase("static partial Phrase P();").Edit("Test.cs", "\"p\"", "\"P!\"").Run().Says($"EXPL212 Test.cs(4) [P]: phrase P!: {Ids.Form}");

    [Fact]
    public void The_class_must_be_partial_as_must_those_around_it() => Phrase("static partial Phrase P();").Edit("Test.cs", "partial class Outer", "class Outer").Run()
        .Says("EXPL001 Test.cs(4) [P]: Outer must be partial (and not local to a file), so that what belongs to P can be written beside it; add 'partial'");

    private static Sample Phrase(string method) => Sample.Of($$"""
        using Explain;
        partial class Outer {
        partial class Phrases {
        [Phrase("p")] {{method}}
        } }
        """);

    private static string Unprintable(string name, string type) => $"EXPL211 Test.cs(4) [{name}]: phrase p: the parameter {name} is of type {type}, "
        + "which no wording can place; use a type that derives from Named, Statement, Expr or Symbol, or ClaimId, int, Phrase, string, or Items<…> of these";
}
