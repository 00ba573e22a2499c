namespace Explain.Generators.Tests.Explained;

public class ExplainedFindingTests
{
    private const string Listed = "Math.Sqrt, Math.Pow with a whole exponent from 2 to 100, and Sin, Cos, Tan, Asin, Acos, Atan of DegreeTrigonometry, or mark a method of your own [Explained]";
    private const string Formula = "a formula is made of parameters, local values, numbers, + - * / and listed functions; move the rest to where the method is called";
    private const string Statements = "allowed are local values, Require.That, if … return, and return; move the rest to where the method is called";

    [Fact]
    public void The_class_must_be_partial() => Method.Body("return a; // r").Edit("Test.cs", "partial ", "").Run()
        .Says("EXPL001 Test.cs(6) [F]: T must be partial (and not local to a file), so that what belongs to F can be written beside it; add 'partial'");

    [Theory]
    [InlineData("while (a > b) return a;")]
    [InlineData("for (;;) return a;")]
    [InlineData("a = b;")]
    [InlineData("a++;")]
    [InlineData("try { return a; } finally { }")]
    [InlineData("using System.IO.MemoryStream s = new();")]
    [InlineData("switch (n) { default: return a; }")]
    [InlineData("throw new Exception();")]
    [InlineData("{ return a; }")]
    [InlineData("Console.WriteLine(a);")]
    public void Other_statements_are_not_allowed(string statement) => Method.Body(statement + "\nreturn a; // r").Run()
        .Says($"EXPL002 Test.cs(7) [{Start(statement)}]: '{statement}' cannot be explained: {Statements}");

    [Theory]
    [InlineData("a % b")]
    [InlineData("new[] { a }[0]")]
    [InlineData("double.MaxValue")]
    [InlineData("1e300")]
    [InlineData("n switch { _ => a }")]
    public void Other_expressions_are_not_allowed(string expression) => Method.Body($"return {expression}; // r").Run()
        .Says($"EXPL002 Test.cs(7) [{expression}]: '{expression}' cannot be explained: {Formula}");

    [Theory]
    [InlineData("if (a > b || n == 3) return b; // r", "a > b || n == 3", "a condition compares two formulas by < <= > >= == or !=, or joins such comparisons by &&")]
    [InlineData("if (a > b) { } // r", "{ }", "each way of an if must return; " + Statements)]
    [InlineData("double y; y = a; // r", "y", "a local gets its value where it is declared")]
    [InlineData("string y = \"\"; // r", "y = \"\"", "a local value is a double, or an int for a count")]
    [InlineData("double y = Math.Pow(y: 2, x: a); // r", "Math.Pow(y: 2, x: a)", "write the arguments in the order of the parameters, without names")]
    public void What_is_nearly_allowed_says_what_is_missing(string statement, string at, string why) => Assert.Contains(
        $"EXPL002 Test.cs(7) [{at}]: '{at}' cannot be explained: {why}", Method.Body(statement + "\nreturn a; // r").Run().Findings);

    [Theory]
    [InlineData("Math.Floor(a)", "Math.Floor")]
    [InlineData("Math.Pow(a, 0.5)", "Math.Pow")]
    [InlineData("Math.Pow(a, n)", "Math.Pow")]
    [InlineData("Plain(a)", "T.Plain")]
    public void Other_functions_are_not_listed(string call, string name) => Method.Body($"return {call}; // r").Edit("Test.cs", "partial class T {", "partial class T { static double Plain(double x) => x;").Run()
        .Says($"EXPL003 Test.cs(7) [{call}]: {name} is not a listed function; use {Listed}");

    [Fact]
    public void A_line_needs_a_reason() => Method.Body("double y = a;\nreturn y; //  ").Run().Says(
        "EXPL004 Test.cs(7) [y = a]: the line of y has no reason; end it with a comment that says why",
        "EXPL004 Test.cs(8) [return y;]: the line of x has no reason; end it with a comment that says why");

    [Fact]
    public void A_condition_needs_a_reason() => Method.Body("Require.That(a > 0);\nif (a > b)\n    return b; // r\nreturn a; // r").Run().Says(
        "EXPL013 Test.cs(7) [Require.That(a > 0);]: the condition 'a > 0' has no reason; end its line with a comment that says why",
        "EXPL013 Test.cs(8) [a > b]: the condition 'a > b' has no reason; end its line with a comment that says why");

    [Fact]
    public void The_declared_unit_must_be_the_calculated_one() => Method.Body("return (a + b) * b * Math.PI; // r").Run()
        .Says("EXPL005 Test.cs(7) [(a + b) * b * Math.PI]: F is declared in m, but '(a + b) * b * Math.PI' is m²: (m + m) × m × π");

    [Theory]
    [InlineData("a + b * b", "a + b * b", "puts m and m² together; only quantities of one unit can be added or compared")]
    [InlineData("a + 1", "a + 1", "puts m and a plain number together; only quantities of one unit can be added or compared")]
    [InlineData("a + C", "a + C", "puts m and ° together; only quantities of one unit can be added or compared")]
    [InlineData("a * C / 360", "a * C", "multiplies m by °; divide the angle by 360 or 180 first, so that it is a part of a turn")]
    [InlineData("1 / a", "1 / a", "divides a plain number by m, which is no kind of quantity here")]
    [InlineData("Math.Sqrt(a)", "Math.Sqrt(a)", "is a square root of m, which is no kind of quantity here")]
    [InlineData("a * Sin(a)", "Sin(a)", "takes an angle in °, but gets m; mark the parameter [Unit(\"°\")]")]
    [InlineData("a * Sin(n)", "Sin(n)", "takes an angle in °, but gets a plain number; mark the parameter [Unit(\"°\")]")]
    [InlineData("a * Asin(C)", "Asin(C)", "takes a plain number, but gets °")]
    [InlineData("a > 1 ? a : b", "a > 1", "puts m and a plain number together; only quantities of one unit can be added or compared")]
    public void Kinds_must_go_together(string expression, string at, string why) => Method.Body($"return {expression}; // r").Run().Says($"EXPL006 Test.cs(7) [{at}]: '{at}' {why}");

    [Fact]
    public void Both_ways_of_a_choice_have_one_unit()
    {
        Method.Body("double y = a > b ? a : b * b; // r\nreturn y; // r").Run().Says("EXPL006 Test.cs(7) [y = a > b ? a : b * b]: 'y = a > b ? a : b * b' puts m and m² together; only quantities of one unit can be added or compared");
        Method.Body("double y = a > b ? 0 : b; // r\nreturn a > b ? y : 0; // r").Run().Compiles();
    }

    [Fact]
    public void Arguments_of_a_call_have_the_unit_of_the_parameter() => Method.In("""
        [Explained] [return: Unit("m²")] public static double Square([Unit("m")] double a) => a * a; // r
        [Explained] [return: Unit("m²")] public static double F([Unit("cm")] double b) => Square(b); // r
        """).Run().Says("EXPL006 Test.cs(6) [b]: 'b' is cm, but Square takes m");

    [Fact]
    public void Functions_of_Math_work_in_radians() => Method.Body("return a * Math.Sin(C); // r").Run()
        .Says("EXPL007 Test.cs(7) [Math.Sin(C)]: Math.Sin works in radians, and angles here are in degrees; use DegreeTrigonometry.Sin");

    [Fact]
    public void A_unit_must_be_in_the_table() => Method.Body("return a; // r").Edit("Test.cs", "[Unit(\"°\")]", "[Unit(\"meter\")]").Edit("Test.cs", "x\"), Unit(\"m\")", "x\"), Unit(\"mm^4\")").Run().Says(
        "EXPL008 Test.cs(6) [C]: meter is no unit of the table",
        "EXPL008 Test.cs(6) [F]: mm^4 is no unit of the table; did you mean mm?");

    [Fact]
    public void A_symbol_stands_for_one_quantity() => Method.Body("double x = a; // r\nreturn x; // r").Edit("Test.cs", "[Unit(\"m\")] double b", "[Symbol(\"a\"), Unit(\"m\")] double b").Run()
        .Says("EXPL009 Test.cs(6) [b]: the symbol a stands for a and for b; give one of them another symbol");

    [Fact]
    public void A_local_has_a_symbol_of_its_own() => Method.Body("double x = a; // r\nreturn x; // r").Run()
        .Says("EXPL009 Test.cs(7) [x]: the symbol x stands for another quantity and for this local; give one of them another symbol");

    [Fact]
    public void Formulas_that_call_each_other_in_a_circle_never_end() => Method.In("""
        [Explained] [return: Symbol("x")] public static double F(double a) => G(a); // r
        [Explained] [return: Symbol("y")] public static double G(double a) => H(a) + F(1); // r
        [Explained] [return: Symbol("z")] public static double H(double a) => a; // r
        [Explained] [return: Symbol("w")] public static double Self(double a) => Self(a - 1); // r
        """).Run().Says(
            "EXPL010 Test.cs(5) [F]: explained methods call each other in a circle: F → G → F; a formula must end",
            "EXPL010 Test.cs(8) [Self]: explained methods call each other in a circle: Self → Self; a formula must end");

    [Theory]
    [InlineData("public static double F(float a) => a; // r", "a", "a must be double, or int for a count")]
    [InlineData("public static double F(ref double a) => a; // r", "a", "a must be a plain parameter, without ref, out, in, params or a default")]
    [InlineData("public static double F(double a = 1) => a; // r", "a", "a must be a plain parameter, without ref, out, in, params or a default")]
    [InlineData("public static double F(params double[] a) => 1; // r", "a", "a must be double, or int for a count")]
    [InlineData("public static double F<X>(double a) => a; // r", "F", "an explained method is static, not generic, and returns by value")]
    [InlineData("public static float F(int a) => a; // r", "F", "its result is float, and must be double")]
    public void A_signature_is_plain(string method, string at, string why) => Method.In("[Explained] " + method).Run().Says($"EXPL011 Test.cs(5) [{at}]: F cannot be explained: {why}");

    [Fact]
    public void An_instance_method_cannot_be_explained() => Sample.Of("partial class T { [Explain.Explained] double F(double a) => a; // r\n}").Run()
        .Says("EXPL011 Test.cs(1) [F]: F cannot be explained: an explained method is static, not generic, and returns by value");

    [Fact]
    public void A_local_that_the_result_does_not_need_is_noticed() => Method.Body("double y = a; // r\ndouble z = y; // r\nreturn b; // r").Run().Says(
        "EXPL012 Test.cs(7) [y]: the result does not depend on y; leave it out, or use it",
        "EXPL012 Test.cs(8) [z]: the result does not depend on z; leave it out, or use it");

    [Fact]
    public void A_reason_names_a_rule_and_roles_that_exist()
    {
        const string rule = "[Rule(\"sine-rule\", Source = \"s\", Then = \"F is on PQ\", Roles = [\"side: AB\"])] static partial class R;";
        const string from = "public static partial class T {", to = rule + " " + from;
        Sample Reason(string words) => Method.Body($"return a; // rule: {words}").Edit("Test.cs", from, to);
        Reason("sine-rule side=b").Run().Compiles();
        Reason("sin-rule side=b").Run().Says("EXPL014 Test.cs(7) [// rule: sin-rule side=b]: there is no rule sin-rule; did you mean sine-rule?");
        Reason("sine-rule top=b").Run().Says("EXPL014 Test.cs(7) [// rule: sine-rule top=b]: the rule sine-rule has no role top; its roles are side");
        Reason("sine-rule side=d").Run().Says("EXPL014 Test.cs(7) [// rule: sine-rule side=d]: the role side names d, which is no symbol of this method");
        Reason("sine-rule side").Run().Says("EXPL014 Test.cs(7) [// rule: sine-rule side]: write a rule as '// rule: sine-rule side=b opposite=B': its id, then role=symbol");
    }

    [Fact]
    public void Where_no_rules_are_known_any_may_be_named()
    {
        Sample sample = Method.Body("return a; // rule: sin-rule");
        sample.Run().Compiles();
        (sample.With("uk.wording.yaml", "sine-rule: x\n") with { Whole = false }).Run().Says("EXPL014 Test.cs(7) [// rule: sin-rule]: there is no rule sin-rule; did you mean sine-rule?");
    }

    [Fact]
    public void A_square_is_better_written_as_a_product() => Method.Body("return Math.Sqrt(Math.Pow(a + b, 2)); // r").Run()
        .Says("EXPL015 Test.cs(7) [Math.Pow(a + b, 2)]: write 'Math.Pow(a + b, 2)' as '(a + b) * (a + b)': it prints the same, and Math.Pow may be off in its last bit");

    [Fact]
    public void A_division_of_whole_numbers_drops_the_remainder() => Method.Body("return (n - 2) * 180 / n * a / 180; // r").Run()
        .Says("EXPL016 Test.cs(7) [(n - 2) * 180 / n]: '(n - 2) * 180 / n' is not calculated in doubles, so C# drops the remainder and the formula would not; write one number with .0, or cast it to double");

    [Fact]
    public void Ways_that_exclude_one_another_may_use_one_symbol() =>
        Method.Body("if (a > b) // c\n{\ndouble y = a; // r\nreturn y; // r\n}\nelse\n{\ndouble y = b; // r\nreturn y; // r\n}").Run().Compiles();

    private static string Start(string text) => text.Length > 30 ? text[..29] + "…" : text;
}
