namespace Explain;

/// <summary>Sizes, and quantities found in two ways.</summary>
[Rule("acute-by-size", When = ["angle ABC < 90°"], Then = "angle ABC is acute", Roles = ["angle: angle ABC"], Source = "Euclid, Elements, I. definition 12")]
[Rule("same-quantity", Then = "AB = AB", Source = "Euclid, Elements, common notion 1")]
internal static partial class MeasurementRules;
