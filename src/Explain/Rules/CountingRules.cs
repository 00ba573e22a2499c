namespace Explain;

/// <summary>How many triangles have three given measurements, where no side can swing; what decides it is the last condition.</summary>
[Rule("no-triangle-from-three-sides", When = ["ABC is a triangle", "AB ≥ BC + CA"], Then = "0 triangles ABC",
    Roles = ["longest: AB", "first: BC", "second: CA"], Source = "Euclid, Elements, I.20")]
[Rule("no-triangle-from-two-angles", When = ["ABC is a triangle", "angle CAB + angle ABC ≥ 180°"], Then = "0 triangles ABC",
    Roles = ["first: angle CAB", "second: angle ABC"], Source = "Euclid, Elements, I.17")]
[Rule("one-triangle-from-two-angles", When = ["ABC is a triangle", "AB > 0 m", "angle CAB + angle ABC < 180°"], Then = "1 triangle ABC",
    Roles = ["first: angle CAB", "second: angle ABC", "side: AB"], Source = "Euclid, Elements, I.26")]
[Rule("one-triangle-from-two-angles-and-a-side-opposite", When = ["ABC is a triangle", "BC > 0 m", "angle CAB + angle ABC < 180°"], Then = "1 triangle ABC",
    Roles = ["first: angle CAB", "second: angle ABC", "side: BC"], Source = "Euclid, Elements, I.26")]
[Rule("one-triangle-with-the-angle-between", When = ["ABC is a triangle", "AB > 0 m", "CA > 0 m", "angle BAC < 180°"], Then = "1 triangle ABC",
    Roles = ["first: AB", "second: CA", "between: angle BAC"], Source = "Euclid, Elements, I.4")]
[Rule("no-triangle-with-a-large-angle", When = ["ABC is a triangle", "angle BAC ≥ 90°", "CB ≤ AC"], Then = "0 triangles ABC",
    Roles = ["side: CB", "other: AC", "angle: angle BAC"], Source = "Euclid, Elements, I.19")]
[Rule("no-triangle-that-reaches", When = ["ABC is a triangle", "angle BAC < 90°", "CB < AC × sin BAC"], Then = "0 triangles ABC",
    Roles = ["side: CB", "line: AB"], Source = "ProofWiki, page Ambiguous_Case_for_Triangle_Side-Side-Angle_Congruence")]
[Rule("no-triangle-below-the-height", When = ["F is the foot of the perpendicular from C to AB", "angle BAC < 90°", "CB < CF"], Then = "0 triangles ABC",
    Roles = ["side: CB", "height: CF", "line: AB"], Source = "Euclid, Elements, I.19: of all that reach the line the perpendicular is the shortest")]
[Rule("number-by-length", Then = Schema.ByEvaluation, Roles = ["angle: angle BAC", "other: AC", "side: CB"], Source = "a length is less than another, equal to it or greater; common practice, no source")]
[Rule("as-many-as-cases", Then = Schema.ByEvaluation, Source = "cases that cannot hold together, each with one triangle; common practice, no source")]
internal static partial class CountingRules;
