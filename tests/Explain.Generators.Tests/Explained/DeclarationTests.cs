namespace Explain.Generators.Tests.Explained;

public class DeclarationTests
{
    [Fact]
    public void Generic_and_nested_types_of_every_kind_may_hold_explained_methods()
    {
        const string method = "[Explained] [return: Symbol(\"y\")] internal static double F(double @class, double α) => @class * α; // r\n";
        Sample.Of($$"""
            using Explain;
            namespace @in.Deep;
            public partial class Outer<T>
            {
                internal partial struct Inner { {{method}} }
                public partial record Person(string Name) { {{method}} }
                internal partial record struct Pair<TOne, TTwo>(TOne A, TTwo B) { {{method}} }
                public partial interface IShape { {{method}} }
                public static double Use() => Inner.Worked.F(1, 2).Value + Person.Worked.F(1, 2).Value + Pair<int, T>.Worked.F(1, 2).Value + IShape.Worked.F(1, 2).Value;
            }
            """).Run().Compiles();
    }

    [Fact]
    public void Overloads_have_formulas_of_their_own()
    {
        Sample sample = Method.In("""
            [Explained] [return: Symbol("y")] public static double F(double a) => a; // one
            [Explained] [return: Symbol("y")] public static double F(double a, double b) => F(a) + b; // two
            """);
        Assert.Equal("F2", sample.Run().Load().GetType("T+Formulas")!.GetProperties().Select(p => p.Name).Except(["F"]).Single());
        Assert.Equal(sample.Formula(), ((ExplainedCall)sample.Formula("F2").Lines[0]).Formula);
    }

    [Fact]
    public void A_class_in_two_files_becomes_one() => Assert.Equal(["G", "F"], Method.In("[Explained] [return: Symbol(\"y\")] public static double F(double a) => a; // one")
        .With("Other.cs", "using Explain; public static partial class T {\n [Explained] [return: Symbol(\"y\")] public static double G(double a) => F(a); // two\n }")
        .Run().Load().GetType("T+Formulas")!.GetProperties().Select(p => p.Name));

    [Fact]
    public void Two_projects_may_have_one_rule_id_and_formulas_call_across()
    {
        const string rule = "[Rule(\"sum\", Then = \"a + b = c\", Source = \"s\", Roles = [\"side: AB\"])] public static partial class Laws;\n";
        Sample first = Method.In(rule + "[Explained] [return: Symbol(\"A\"), Unit(\"m²\")] public static double Square([Unit(\"m\")] double a) => a * a; // rule: sum side=a");
        Sample second = Sample.Of("using Explain;\n" + rule + """
            public static partial class Solids
            {
                [Explained] [return: Symbol("V"), Unit("m³")] public static double Box([Unit("m")] double a) => T.Square(a) * a; // rule: sum side=a
                public static int Count => Laws.Book.All.Count + T.Laws.Book.All.Count;
            }
            """);
        (second with { Name = "Second", Uses = first }).Run().Compiles();
    }

    [Fact]
    public void Nullable_contexts_may_be_off() =>
        (Method.Body("return a; // r") with { Nullable = Microsoft.CodeAnalysis.NullableContextOptions.Disable }).Run().Compiles();

    [Fact]
    public void What_is_private_stays_inside() => Assert.Null(Method.In("[Explained] [return: Symbol(\"y\")] private static double F(double a) => a; // r")
        .Run().Load().GetType("T")!.GetProperty("Rules"));

    [Fact]
    public void The_signs_of_units_are_those_of_the_unit_table() => Assert.Equal(Unit.Table.Select(u => u.Symbol), UnitModel.Signs);
}
