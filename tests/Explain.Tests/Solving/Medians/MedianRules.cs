namespace Explain.Tests.Solving.Medians;

/// <summary>The line from a corner of a triangle to the midpoint of the opposite side.</summary>
internal static class MedianRules
{
    private static readonly Expr Median = new Letter("median"), Halved = new Letter("halved"), First = new Letter("first"), Second = new Letter("second"), Between = new Letter("between");

    /// <summary>median² = (2 first² + 2 second² − halved²) ÷ 4.</summary>
    public static Rule LengthOfAMedian { get; } = Relation("length-of-a-median", "Apollonius' theorem; from memory",
        new(Square(Median), (2 * Square(First) + 2 * Square(Second) - Square(Halved)) / 4),
        [Of("median", "CM"), Of("halved", "AB"), Of("first", "BC"), Of("second", "CA")], [Of("triangle", "ABC")]);

    /// <summary>The cosine rule in triangle AMC: median² = second² + halved² ÷ 4 − second × halved × cos between.</summary>
    public static Rule CosineRuleToAMidpoint { get; } = Relation("cosine-rule-to-a-midpoint", "OpenStax, Precalculus 2e, section 8.2",
        new(Square(Median), Square(Second) + Square(Halved) / 4 - Second * Halved * new Apply(Function.Cosine, Between)),
        [Of("median", "CM"), Of("second", "CA"), Of("halved", "AB"), Of("between", "angle CAB")], [new("middle", "M is the midpoint of AB", IsCondition: true)]);

    private static Rule Relation(string id, string source, Equation law, Items<RolePattern> quantities, Items<RolePattern> roles) =>
        new(new(id), ["ABC is a triangle", "M is the midpoint of AB"], null, law, quantities, [.. quantities, .. roles], source, 1);

    private static RolePattern Of(string name, string pattern) => new(name, pattern, IsCondition: false);

    private static Power Square(Expr of) => new(of, 2);
}
