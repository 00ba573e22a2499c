namespace Explain;

/// <summary>Steps of one kind, printed as a table.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Says">What the rows say together.</param>
/// <param name="Why">The rule and what it rests on.</param>
/// <param name="Columns">The headings of the columns, after the label's.</param>
/// <param name="Rows">The rows.</param>
/// <param name="Example">The row that is also written out in full, counted from 0; null for none.</param>
public sealed record Series(ClaimId Id, Statement Says, RuleUse Why, Items<Phrase> Columns, Items<SeriesRow> Rows, int? Example)
    : Step(Id, Says, Why);
