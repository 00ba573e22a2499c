namespace Explain;

/// <summary>Quantities found in two ways, formulas put together, and how a result depends on what was measured.</summary>
[Rule("same-quantity", Then = Schema.ByEvaluation, Source = "Euclid, Elements, common notion 1")]
[Rule("comparison-of-values", Then = Schema.ByEvaluation, Source = "each value traced back to what is given; common practice, no source")]
[Rule("as-given", Then = Schema.ByEvaluation, Source = "Euclid, Elements, common notion 1")]
[Rule("put-in-the-letter", Then = Schema.ByEvaluation, Source = "substitution of equals; Euclid, Elements, common notion 1")]
[Rule("earlier-steps", Then = Schema.ByEvaluation, Source = "substitution of equals; Euclid, Elements, common notion 1")]
[Rule("as-a-multiple", Then = Schema.ByEvaluation, Roles = ["measured: AB"], Source = "Euclid, Elements, V.1 in modern dress; common practice, no source")]
[Rule("link-by-link", Then = Schema.ByEvaluation, Roles = ["links: A"], Source = "composition of functions that only rise or only fall; common practice, no source")]
[Rule("one-direction", Then = Schema.ByEvaluation, Source = "a derivative of one sign over an interval; common practice, no source")]
[Rule("ends-of-the-bounds", Then = Schema.ByEvaluation, Source = "a quantity that only rises or only falls is extreme at an end; common practice, no source")]
internal static partial class MeasurementRules;
