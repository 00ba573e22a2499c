using Microsoft.CodeAnalysis;

namespace Explain.Generators.Tests;

/// <summary>What is calculated again after an edit, and what is not.</summary>
public class RunReasonTests
{
    private static readonly Sample Project = Sample.Of("""
        using Explain;
        [Rule("touching", When = ["line: PQ touches c at P"], Then = "angle OPQ = 90", Source = "Elements III.18")]
        internal static partial class Circles;
        internal static partial class Words
        {
            [Phrase("given")] public static partial Phrase Given(Point what);
            private static int Plain(int n) => n + 1;
        }
        """)
        .With("Shapes.cs", """
            using Explain;
            public static partial class Shapes
            {
                [Explained] [return: Symbol("A"), Unit("m²")]
                public static double Square([Unit("m")] double a) => a * a;   // the side times itself
            }
            """)
        .With("Other.cs", "public static class Other { public static int Number => 1; }")
        .With("uk.wording.yaml", "touching: tangent {line}\ngiven: given {what}\n");

    [Fact]
    public void The_project_is_in_order() => Project.Run().Compiles();

    [Fact]
    public void An_edit_in_another_file_changes_nothing() => Unchanged(p => p.Edit("Other.cs", "=> 1", "=> 2"));

    [Fact]
    public void An_edit_of_another_method_in_the_same_file_changes_nothing() => Unchanged(p => p.Edit("Test.cs", "n + 1", "n + 2"));

    [Fact]
    public void Lines_added_above_move_places_but_write_nothing_again()
    {
        GeneratorRunResult run = Project.RunAfter(p => p.Edit("Test.cs", "using Explain;", "using Explain;\n// more\n"));
        Assert.Equal([IncrementalStepRunReason.Modified], Caching.Reasons(run, StageNames.PhraseReadings));
        Assert.All([StageNames.Phrases, StageNames.Rules, StageNames.Methods], stage => Assert.All(Caching.Reasons(run, stage), r => Assert.Contains(r, Kept)));
        Assert.All(Caching.OutputReasons(run), r => Assert.Equal(IncrementalStepRunReason.Cached, r));
    }

    [Fact]
    public void A_comment_is_a_reason_so_its_edit_writes_the_twin_again()
    {
        GeneratorRunResult run = Project.RunAfter(p => p.Edit("Shapes.cs", "the side times itself", "a square"));
        Assert.Equal([IncrementalStepRunReason.Modified], Caching.Reasons(run, StageNames.Methods));
        Assert.All(Caching.Reasons(run, StageNames.Phrases).Concat(Caching.Reasons(run, StageNames.Rules)), r => Assert.Contains(r, Kept));
        Assert.Single(Caching.OutputReasons(run), r => r == IncrementalStepRunReason.Modified);
    }

    [Fact]
    public void An_edit_in_a_wording_file_checks_again_and_writes_nothing_again()
    {
        GeneratorRunResult run = Project.RunAfter(p => p.Edit("uk.wording.yaml", "given {what}", "given {that}"));
        Assert.Equal([IncrementalStepRunReason.New], Caching.Reasons(run, StageNames.WordingFindings));
        Assert.All([StageNames.Phrases, StageNames.Rules, StageNames.Methods], stage => Assert.All(Caching.Reasons(run, stage), r => Assert.Contains(r, Kept)));
        Assert.Equal("EXPL204", Assert.Single(run.Diagnostics).Id);
    }

    private static readonly IncrementalStepRunReason[] Kept = [IncrementalStepRunReason.Cached, IncrementalStepRunReason.Unchanged];

    private static void Unchanged(Func<Sample, Sample> edit) => Caching.CheckUnchanged(Project.RunAfter(edit));
}
