namespace Explain.Generators;

/// <summary>What was read of an explained method, and the rules that its comments name.</summary>
internal sealed record ExplainedReading(Reading<ExplainedModel> Of, EquatableArray<Mention> Mentions);
