namespace Explain;

/// <summary>
/// Decides whether a solution may be printed. It matches each step with the schema of its rule by its own code and finds each
/// value again from coordinates; it shares no code with the search that made the solution.
/// </summary>
internal sealed class Referee(RuleBook book)
{
    private static readonly Items<string> Tests = ["V1", "V2", "V4", "V5"];
    private static readonly Items<int> Bits = [192, 384, 768];

    /// <summary>Runs the tests of shape, rules, values and cases.</summary>
    /// <param name="solution">The solution.</param>
    /// <param name="model">What draws its problem.</param>
    /// <param name="cancel">Says that the result is no longer wanted.</param>
    public Verification Verify(Solution solution, IIndependentModel model, CancellationToken cancel = default)
    {
        Items<Finding> findings = [];
        foreach (int bits in Bits)
        {
            findings = new Hearing(book, solution, model, bits).Findings(cancel);
            if (!findings.Any(f => f.Test is "V4" or "V5")) break;
        }

        Items<Graded> grades = findings.Count > 0 ? [] : [.. solution.Steps.Select(s => new Graded(s.Id, Grade.Derived))];
        return new(true, [.. Tests.Where(t => findings.All(f => f.Test != t))], findings, grades);
    }
}
