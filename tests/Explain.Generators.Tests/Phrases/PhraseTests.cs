using System.Reflection;

namespace Explain.Generators.Tests.Phrases;

public class PhraseTests
{
    private const string Source = """
        using Explain;
        namespace Demo;
        public static partial class Phrases
        {
            [Phrase("everything.there-is")]
            public static partial Phrase Everything(Point foot, Line @in, Statement s, Symbol q, Length l, Expr e, Quotient d, ClaimId step, Items<ClaimId> steps, int n, Phrase p, string text, Items<Point> points, Items<string> texts, Items<Expr> lines);

            [Phrase("nothing")] internal static partial Phrase Nothing();

            internal partial class Inner<T>
            {
                [Phrase("inner")] private static partial Phrase Inside(Point class1);
                public static Phrase Use(Point at) => Inside(at);
            }
        }
        """;

    private static readonly Assembly Demo = Sample.Of(Source).Run().Load();

    [Fact]
    public void Each_kind_of_parameter_becomes_its_argument()
    {
        Point a = new("A"), b = new("B");
        Phrase other = Say("Nothing");
        Phrase said = Say("Everything", a, new Line(a, b), new All([]), new Letter("x"), new Length(a, b), (Expr)2, new Quotient(1, 2), new ClaimId("s1"),
            (Items<ClaimId>)[new("s2"), new("s3")], 4, other, "words", (Items<Point>)[a, b], (Items<string>)["t"], (Items<Expr>)[3]);
        Assert.Equal(new Phrase(new PhraseId("everything.there-is"),
        [
            new NamedArg("foot", a), new NamedArg("in", new Line(a, b)), new StatementArg("s", new All([])), new FormulaArg("q", new Letter("x")),
            new FormulaArg("l", new Length(a, b)), new FormulaArg("e", 2), new FormulaArg("d", new Quotient(1, 2)), new StepArg("step", [new("s1")]),
            new StepArg("steps", [new("s2"), new("s3")]), new CountArg("n", 4), new PhraseArg("p", other), new TextArg("text", "words"),
            new ListArg("points", [new NamedArg("points", a), new NamedArg("points", b)]), new ListArg("texts", [new TextArg("texts", "t")]),
            new ListArg("lines", [new FormulaArg("lines", 3)]),
        ]), said);
    }

    [Fact]
    public void A_phrase_without_parameters_has_no_arguments() => Assert.Equal(new Phrase(new PhraseId("nothing"), []), Say("Nothing"));

    private static Phrase Say(string method, params object[] arguments) => (Phrase)Demo.GetType("Demo.Phrases")!
        .GetMethod(method, BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic)!.Invoke(null, arguments)!;
}
