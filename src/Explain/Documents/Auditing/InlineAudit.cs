namespace Explain;

/// <summary>Holds each run of a place against what the place may show.</summary>
/// <param name="evidence">What it may show.</param>
/// <param name="rules">Ids whose wordings are reasons.</param>
/// <param name="table">The words of the renderer.</param>
internal sealed class InlineAudit(Evidence evidence, HashSet<string> rules, WordingTable table)
{
    /// <summary>What comes from elsewhere, each as its kind and its text.</summary>
    public IEnumerable<string> Strangers(Inline run) => run switch
    {
        WordRun words => Words(words),
        MathRun mathematics => Mathematics(mathematics.Is),
        StepRun { Number: "" } => [],
        StepRun step => Unless(evidence.StepNumbers.Contains(step.Number), "step " + step.Number),
        CountRun count => Unless(evidence.Counts.Contains(count.Is), "count " + count.Text),
        UserRun user => Unless(user.Text.Length == 0 || evidence.Texts.Contains(ProblemGathering.PlainText(user.Text)), "text " + user.Text),
        Strong strong => strong.Runs.SelectMany(Strangers),
        Emphasis emphasis => emphasis.Runs.SelectMany(Strangers),
        _ => throw new ArgumentException(run.GetType().Name, nameof(run)),
    };

    private IEnumerable<string> Words(WordRun words)
    {
        if (words.From is not { } id) return InWords(words.Text);
        string reason = RuleOf(id);
        return Unless(!rules.Contains(reason) || evidence.Rules.Contains(reason), "reason " + reason).Concat(Unless(IsWorded(id, words.Text), "words " + words.Text));
    }

    private static string RuleOf(string id) => id.LastIndexOf('.') is > 0 and var dot && id[dot..] is ".again" or ".title" or ".look" ? id[..id.LastIndexOf('.')] : id;

    /// <summary>Whether the words stand in the wording of their id; only the capital of a sentence may differ.</summary>
    private bool IsWorded(string id, string words) => table.Find(id) is { } pieces && pieces.Any(p => p switch
    {
        WordingWords w => w.Text.Contains(words, StringComparison.OrdinalIgnoreCase),
        WordingChoice c => c.One.Equals(words, StringComparison.OrdinalIgnoreCase) || c.Other.Equals(words, StringComparison.OrdinalIgnoreCase),
        _ => false,
    });

    private IEnumerable<string> Mathematics(MathPiece piece) => piece switch
    {
        MathNumber number => Unless(evidence.Holds(number), "number " + number.Digits + (number.Continues ? "…" : "")),
        MathName name => Unless(evidence.Names.Contains(name.Letters), "name " + name.Letters),
        MathWords words => InWords(words.Text),
        MathJoin join => InWords(join.Word),
        MathMark mark => InWords(mark.Sign),
        MathSign sign => InWords(sign.Sign),
        MathPower power => Mathematics(power.Base).Concat(Unless(evidence.Exponents.Contains(power.Exponent), "exponent " + MathPlain.Write(power))),
        MathRow row => row.Of.SelectMany(Mathematics),
        MathFraction fraction => Mathematics(fraction.Top).Concat(Mathematics(fraction.Bottom)),
        MathRoot root => Mathematics(root.Of),
        MathFunction function => Mathematics(function.Of),
        MathBrackets brackets => Mathematics(brackets.Of),
        MathUnit => [],
        _ => throw new ArgumentException(piece.GetType().Name, nameof(piece)),
    };

    /// <summary>Numbers and names in text that no argument brought.</summary>
    public static IEnumerable<string> InWords(string text) => NumbersInText.Of(text).Select(n => "number " + n).Concat(NamesInText.Of(text).Select(n => "name " + n));

    private static IEnumerable<string> Unless(bool holds, string stranger) => holds ? [] : [stranger];
}
