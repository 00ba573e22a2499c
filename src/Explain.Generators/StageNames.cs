namespace Explain.Generators;

/// <summary>The names of the generator's stages.</summary>
internal static class StageNames
{
    public const string PhraseReadings = nameof(PhraseReadings);
    public const string Phrases = nameof(Phrases);
    public const string RuleReadings = nameof(RuleReadings);
    public const string Rules = nameof(Rules);
    public const string MethodReadings = nameof(MethodReadings);
    public const string Methods = nameof(Methods);
    public const string Circles = nameof(Circles);
    public const string Mentions = nameof(Mentions);
    public const string WordingTexts = nameof(WordingTexts);
    public const string WordingFindings = nameof(WordingFindings);
    public const string Findings = nameof(Findings);
}
