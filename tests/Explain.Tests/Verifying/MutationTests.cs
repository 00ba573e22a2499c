namespace Explain.Tests.Verifying;

public sealed class MutationTests
{
    /// <summary>One mutant in this many is asked for: all of them take about twenty minutes.</summary>
    private static readonly int OneIn = Effort.Of(30, 15, 1);

    public static TheoryData<string> Names => RefereeTests.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void EverySpoiltStepIsRefused(string name)
    {
        (string Name, Solution Is)[] mutants = [.. Mutants.Of(Cast.Solved(RefereeTests.Named(name)))];
        Assert.True(mutants.Length > 40, $"only {mutants.Length}");
        string[] survivors = [.. mutants.Where((_, i) => i % OneIn == name.Length % OneIn).Where(m => Cast.Verify(m.Is).Findings.Count == 0).Select(m => m.Name).Order(StringComparer.Ordinal)];
        Assert.True(survivors.Length == 0, $"{survivors.Length} of {mutants.Length} survive: {string.Join("; ", survivors)}");
    }
}
