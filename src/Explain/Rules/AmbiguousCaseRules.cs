namespace Explain;

/// <summary>Two sides and an angle that is not between them: how many triangles.</summary>
[Rule("two-triangles", When = ["F is the foot of the perpendicular from C to AB", "angle BAC < 90°", "CF < CB", "CB < AC"], Then = "2 triangles ABC",
    Roles = ["foot: F", "side: CB", "height: CF", "other: AC", "line: AB", "start: A", "moving: B"],
    Source = "ProofWiki, page Ambiguous_Case_for_Triangle_Side-Side-Angle_Congruence")]
[Rule("one-triangle-that-just-reaches", When = ["F is the foot of the perpendicular from C to AB", "angle BAC < 90°", "CF = CB"], Then = "1 triangle ABC",
    Roles = ["foot: F", "side: CB", "height: CF", "other: AC", "line: AB", "start: A", "moving: B"],
    Source = "ProofWiki, page Ambiguous_Case_for_Triangle_Side-Side-Angle_Congruence")]
[Rule("one-triangle-with-the-longer-side-opposite", When = ["ABC is a triangle", "angle BAC < 90°", "CB ≥ AC"], Then = "1 triangle ABC",
    Roles = ["side: CB", "other: AC", "line: AB", "start: A", "moving: B", "angle: angle BAC"],
    Source = "ProofWiki, page Ambiguous_Case_for_Triangle_Side-Side-Angle_Congruence")]
[Rule("one-triangle-with-a-large-angle", When = ["ABC is a triangle", "angle BAC ≥ 90°", "CB > AC"], Then = "1 triangle ABC",
    Roles = ["side: CB", "other: AC", "line: AB", "start: A", "moving: B", "angle: angle BAC"],
    Source = "ProofWiki, page Ambiguous_Case_for_Triangle_Side-Side-Angle_Congruence")]
internal static partial class AmbiguousCaseRules;
