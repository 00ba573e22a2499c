namespace Explain.Generators.Tests.Explained;

public class CommentTests
{
    [Fact]
    public void The_comment_of_a_return_over_several_lines_is_the_one_at_its_end() => Says("""
        return a   // not this
            + b;   // this
        """, "this");

    [Fact]
    public void Where_the_end_has_none_it_is_the_last_inside() => Says("""
        return a   // not this
            + b    // this
            ;
        """, "this");

    [Fact]
    public void A_comment_may_stand_behind_the_arrow() => Arrow("""
        =>   // why
            a;
        """);

    [Fact]
    public void A_comment_may_stand_behind_an_expression() => Arrow("=> a; // why");

    [Fact]
    public void In_a_list_of_locals_a_comment_belongs_to_the_separator() => Says("""
        double y = a,   // first
            z = b;      // second
        return y + z;   // third
        """, "first", "second", "third");

    [Fact]
    public void Comments_of_code_that_is_switched_off_are_none() => Says("""
        #if NEVER
        double y = b; // never
        #else
        double y = a; // always
        #endif
        return y; // so
        """, "always", "so");

    [Fact]
    public void Two_strokes_in_a_string_are_no_comment() => Method.Body("""
        return a + "// no".Length; // yes
        """).Run().Says("EXPL002 Test.cs(7) [\"// no\".Length]: '\"// no\".Length' cannot be explained: a formula is made of parameters, local values, numbers, + - * / and listed functions; move the rest to where the method is called");

    [Theory]
    [InlineData("verbatim \\n @\"x\" and \"\"\"raw\"\"\"")]
    [InlineData("α ≤ β, {{braces}} <b>tags</b> &amp; $x$ %d")]
    [InlineData("a // b /* c */")]
    public void Text_is_data(string text) => Says($"return a; // {text}", text);

    [Fact]
    public void Line_endings_change_nothing()
    {
        Sample sample = Method.Body("double y = a;   // first\nreturn y;   // second");
        string windows = sample.Sources["Test.cs"].Replace("\n", "\r\n", StringComparison.Ordinal);
        Assert.Equal(sample.Formula(), sample.With("Test.cs", windows).Formula());
        Assert.Equal(sample.Formula(), sample.With("Test.cs", windows.TrimEnd()).Formula());
    }

    private static void Says(string body, params string[] reasons) => Assert.Equal(reasons, Method.Body(body).Formula().Lines.Select(Method.Reason));

    private static void Arrow(string body) => Assert.Equal("why", Method.Reason(Assert.Single(
        Method.In($"[Explained] [return: Symbol(\"x\")] public static double F(double a) {body}").Formula().Lines)));
}
