namespace Explain.Tests.Verifying;

public sealed class RefereeTests
{
    public static TheoryData<string> Names => [.. Cast.Problems.Select(p => p.Name)];

    internal static Problem Named(string name) => Cast.Problems.First(p => p.Name == name).Of;

    [Theory]
    [MemberData(nameof(Names))]
    public void WhatTheSolverFindsStands(string name)
    {
        Solution solution = Cast.Solved(Named(name));
        Verification verification = Cast.Verify(solution);
        Assert.Equal([], Said(verification));
        Assert.True(verification.Ran);
        Assert.Equal(solution.Steps.Count(), verification.Grades.Count);
        Assert.All(verification.Grades, g => Assert.Equal(Grade.Derived, g.Grade));
    }

    internal static string[] Said(Verification verification) => [.. verification.Findings.Select(f => $"{f.Test} {f.Claim?.Name} {f.Detail}")];
}
