namespace Explain.Tests.Verifying;

public sealed class MutationTests
{
    /// <summary>A tenth of the mutants by default, all of them on request.</summary>
    private static readonly bool Full = Environment.GetEnvironmentVariable("EXPLAIN_MUTANTS") == "1";

    public static TheoryData<string> Names => RefereeTests.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void EverySpoiltStepIsRefused(string name)
    {
        (string Name, Solution Is)[] mutants = [.. Mutants.Of(Cast.Solved(RefereeTests.Named(name)))];
        Assert.True(mutants.Length > 40, $"only {mutants.Length}");
        string[] survivors = [.. mutants.Where((_, i) => Full || i % 10 == name.Length % 10).Where(m => Cast.Verify(m.Is).Findings.Count == 0).Select(m => m.Name).Order(StringComparer.Ordinal)];
        Assert.True(survivors.Length == 0, $"{survivors.Length} of {mutants.Length} survive: {string.Join("; ", survivors)}");
    }
}
