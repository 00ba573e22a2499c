using Xunit.Sdk;

namespace Explain.Tests.Solutions;

/// <summary>The test of replay sees a solution whose replay is wrong.</summary>
public sealed class SpoiltReplayTests
{
    private static readonly (string Fault, string Problem, Func<Solution, Solution> Spoil)[] Plants =
    [
        ("no comparison is decided again", "one from three sides", s => With(s, Unsaid)),
        ("the place of a foot is not decided again", "foot beyond", s => With(s, step => step.Says is Place ? step with { Why = step.Why with { When = [] } } : step)),
        ("givens need not agree", "more than is needed", s => With(s, Unsaid) with { Premises = [.. s.Premises.Select(p => p.Says is Compare ? p with { Needs = [] } : p)] }),
        ("a stated angle need not be acute", "an acute angle of three sides", s => s with { Premises = [.. s.Premises.Select(p => p.Says is Place { Kind: PlaceKind.Acute } ? p with { Needs = [] } : p)] }),
        ("a formula is wrong", "pond", s => With(s, step => step is Calculation c ? c with { Formula = new Product(2, c.Formula) } : step)),
        ("a direction is not decided again", "measured throughout", s => With(s, step => step.Says is Varies ? new Instruction(step.Id, step.Says, step.Why, TopicPhrases.CountFirst(), []) : step)),
    ];

    public static TheoryData<string> Faults => [.. Plants.Select(p => p.Fault)];

    [Theory]
    [MemberData(nameof(Faults))]
    public void APlantedFault_IsSeen(string fault)
    {
        (_, string problem, Func<Solution, Solution> spoil) = Plants.First(p => p.Fault == fault);
        Solution solution = Plays.Solved(problem), spoilt = spoil(solution);
        Random random = new(1);
        for (int i = 0; i < 200; i++)
        {
            try
            {
                ReplayTests.Check(spoilt, solution, Plays.Changes(solution, random));
            }
            catch (XunitException)
            {
                return;
            }
        }

        Assert.Fail("not seen: " + fault);
    }

    /// <summary>A step that decides nothing again.</summary>
    private static Step Unsaid(Step step) => step is Deduction { Says: Compare or HowMany } ? new Instruction(step.Id, step.Says, step.Why with { When = [] }, TopicPhrases.CountFirst(), []) : step;

    private static Solution With(Solution solution, Func<Step, Step> by) => solution with
    {
        Parts = [.. solution.Parts.Select(part => part with { Passages = [.. part.Passages.Select(passage => passage with { Steps = [.. passage.Steps.Select(s => Each(s, by))] })] })],
    };

    private static Step Each(Step step, Func<Step, Step> by) => by(step switch
    {
        Split split => split with { Cases = [.. split.Cases.Select(c => c with { Steps = [.. c.Steps.Select(s => Each(s, by))] })] },
        Series series => series with { Rows = [.. series.Rows.Select(r => r with { Cells = [.. r.Cells.Select(c => Each(c, by))] })] },
        _ => step,
    });
}
