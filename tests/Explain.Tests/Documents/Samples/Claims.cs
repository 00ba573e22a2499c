namespace Explain.Tests.Documents.Samples;

/// <summary>Writes claims of a sample solution, with every value evaluated from the givens.</summary>
internal sealed class Claims
{
    private readonly Dictionary<ClaimId, Expr> closed = [];

    public static Symbol Quantity(string text) => QuantityGrammar.Read(text) ?? throw new ArgumentException(text);

    public static Statement Statement(string text) => StatementGrammar.Read(text) ?? throw new ArgumentException(text);

    public static ValueOf Value(string claim) => new(new ClaimId(claim));

    public static Expr Sine(string angle) => new Apply(Function.Sine, Quantity(angle));

    public static Expr Cosine(string angle) => new Apply(Function.Cosine, Quantity(angle));

    public static Expr Tangent(string angle) => new Apply(Function.Tangent, Quantity(angle));

    public static RuleUse Why(string rule, string from, params (string Name, RoleValue Is)[] roles) =>
        new(new("sample-" + rule), [.. roles.Select(r => new Role(r.Name, r.Is, IsCondition: r.Is is Holding))], [.. from.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(f => new ClaimId(f))]);

    public static (string, RoleValue) Amount(string name, string quantity) => (name, new Amount(Quantity(quantity)));

    public static (string, RoleValue) Objects(string name, params Named[] objects) => (name, new Objects([.. objects]));

    public static (string, RoleValue) Holding(string name, string claim) => (name, new Holding(new(claim)));

    public static Point Point(string name) => new(name);

    public static Line Line(string name) => new(new(name[..1]), new(name[1..]));

    public static Polygon Triangle(string name) => new([.. name.Select(c => new Point(c.ToString()))]);

    public static Phrase Phrase(string id, params Arg[] args) => new(new(id), [.. args]);

    public static Given Given(string quantity, string value)
    {
        Assert.True(ValueReader.TryRead(value, out GivenValue? read, out _));
        return new(Quantity(quantity), read.Is, read.Within, read.Typed, default);
    }

    public Premise Premise(string id, Given given)
    {
        closed[new(id)] = given.Value;
        return new(new(id), Compare.Equal(given.Of, given.Value), Source.Given) { Within = given.Within };
    }

    public static Premise Figure(string id, string statement) => new(new(id), Statement(statement), Source.Figure);

    /// <summary>A calculation; bindings as "PQ=g1, angle PQT=g3".</summary>
    public Calculation Calculate(string id, RuleUse why, Items<Compare> law, Symbol target, Expr formula, string bindings)
    {
        Items<Binding> bound = [.. bindings.Split(", ").Select(b => b.Split('=')).Select(b => new Binding(Quantity(b[0]), Value(b[1])))];
        Expr whole = Close(formula.Substitute(e => e is SymbolUse u ? bound.First(b => b.Of == u.Symbol).Is : null));
        closed[new(id)] = whole;
        Value value = Assert.IsType<Evaluated>(Evaluator.Evaluate(whole)).Value;
        return new(new(id), Compare.Equal(target, formula), why, law, target, formula, bound, value);
    }

    public static Deduction Deduce(string id, RuleUse why, Statement says) => new(new(id), says, why);

    private Expr Close(Expr expr) => expr.Substitute(e => e is ValueOf v ? closed[v.Claim] : null);
}
