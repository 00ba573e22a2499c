namespace Explain;

/// <summary>What the roots of a quadratic equation say of a figure: two positive roots, or one and another that is no length.</summary>
[Rule("both-roots", Then = Schema.ByEvaluation, Roles = ["moving: B"], Source = "a quadratic has at most two roots; common practice, no source")]
[Rule("other-root-is-excluded", Then = Schema.ByEvaluation, Roles = ["moving: B"], Source = "a quadratic has at most two roots; common practice, no source")]
[Rule("other-root-is-negative", Then = Schema.ByEvaluation, Roles = ["moving: B"], Source = "a quadratic has at most two roots; common practice, no source")]
[Rule("other-root-is-zero", Then = Schema.ByEvaluation, Roles = ["moving: B", "start: A"], Source = "a quadratic has at most two roots; common practice, no source")]
[Rule("only-root", Then = Schema.ByEvaluation, Roles = ["moving: B"], Source = "a quadratic whose discriminant is 0 has one root; common practice, no source")]
[Rule("midway-between-roots", Then = Schema.ByEvaluation, Roles = ["foot: F", "moving: B"], Source = "the roots of a quadratic add up to its linear coefficient taken negative; common practice, no source")]
internal static partial class QuadraticRules;
