using Explain.Tests.Documents.Samples;

namespace Explain.Tests.Documents;

public sealed class WorkedSolutionTests
{
    [Theory]
    [InlineData(English.UnitedKingdom, Output.Markdown, "uk", "md")]
    [InlineData(English.UnitedStates, Output.Markdown, "us", "md")]
    [InlineData(English.UnitedKingdom, Output.Latex, "uk", "tex")]
    [InlineData(English.UnitedStates, Output.Latex, "us", "tex")]
    public void Mast(English english, Output output, string short_, string extension) =>
        Snapshot.Verify(SampleWords.Renderer(english).Render(Samples.Mast.Solution, Form.WorkedSolution, output), "Mast." + short_, extension);

    [Theory]
    [InlineData(English.UnitedKingdom, Output.Markdown, "uk", "md")]
    [InlineData(English.UnitedStates, Output.Markdown, "us", "md")]
    [InlineData(English.UnitedKingdom, Output.Latex, "uk", "tex")]
    [InlineData(English.UnitedStates, Output.Latex, "us", "tex")]
    public void TwoTriangles(English english, Output output, string short_, string extension) =>
        Snapshot.Verify(SampleWords.Renderer(english).Render(Samples.TwoTriangles.Solution, Form.WorkedSolution, output), "TwoTriangles." + short_, extension);
}
