namespace Explain.Tests.Solving;

/// <summary>Cautions go by the topic and by what the names say a thing is, never by the text of the story.</summary>
public sealed class CautionsByNames
{
    private const string Strength = "strength", Outdoors = "visit the place first";

    [Theory]
    [InlineData("the prop", true, false)]
    [InlineData("the steel beams", true, false)]
    [InlineData("the Rafter", true, false)]
    [InlineData("the far sight line", false, true)]
    [InlineData("the width of the ravine", false, true)]
    [InlineData("the rope", false, false)]
    [InlineData("the beam end mark", false, false)]
    [InlineData("the propeller", false, false)]
    public void AName_BringsItsCaution(string name, bool built, bool outdoors)
    {
        string said = Said("solve a triangle", $"names:\n  AB: {name}\n");
        Assert.Equal(built, said.Contains(Strength, StringComparison.Ordinal));
        Assert.Equal(outdoors, said.Contains(Outdoors, StringComparison.Ordinal));
    }

    [Fact]
    public void TheStory_BringsNone() => Assert.Empty(Said("solve a triangle", "question: A beam and a prop are seen along a sight line.\n"));

    [Fact]
    public void BothKinds_AreSaidOnceEach()
    {
        string[] said = Said("inaccessible distance", "names:\n  AB: the sight line\n  BC: the beam\n  CA: the prop\n").Split('\n');
        Assert.Equal(4, said.Length);
        Assert.Equal(said.Distinct(), said);
    }

    private static string Said(string topic, string more)
    {
        Problem problem = Problem.Read($"topic: {topic}\n{more}figure: ABC is a triangle\ngiven:\n  AB: 30 m\n  angle BAC: 62°\n  angle ABC: 71°\nfind: CA\n", "asked.yaml");
        Renderer renderer = new(English.UnitedKingdom);
        return string.Join('\n', Assert.IsType<Solved>(new Solver().Solve(problem)).Solution.Cautions.Select(renderer.Say));
    }
}
