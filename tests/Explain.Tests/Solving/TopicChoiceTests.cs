namespace Explain.Tests.Solving;

/// <summary>A problem that names no topic goes to the only topic that accepts it.</summary>
public sealed class TopicChoiceTests
{
    private const string Solved = "solve a triangle", Both = "inaccessible distance, solve a triangle";

    [Theory]
    [InlineData(Solved, "ABC is a triangle", "AB: 7 cm, BC: 8 cm, CA: 9 cm", "angles of ABC")]
    [InlineData(Solved, "ABC is a triangle", "AB: 7 cm, BC: 8 cm, CA: 9 cm", "angle ABC")]
    [InlineData(Solved, "ABC is a triangle", "AB: 7 cm, angle BAC: 50°, angle ABC: 60°", "sides of ABC")]
    [InlineData(Solved, "ABC is a triangle", "AB: 7 cm, BC: 8 cm, CA: 9 cm", "distance from A to BC")]
    public void TheOnlyTopicThatAccepts_IsUsed(string topic, string figure, string given, string find)
    {
        Solution chosen = Assert.IsType<Solved>(Solve(figure, given, find)).Solution;
        Solution named = Assert.IsType<Solved>(new Solver().Solve(Read($"topic: {topic}\n", figure, given, find))).Solution;
        Assert.Equal(topic, chosen.Topic.Name);
        Assert.Equal(named.Parts.SelectMany(p => p.Answers).SelectMany(a => a.Values), chosen.Parts.SelectMany(p => p.Answers).SelectMany(a => a.Values));
    }

    [Theory]
    [InlineData(Both, "ABC is a triangle", "AB: 7 m, angle BAC: 50°, angle ABC: 60°", "BC")]
    [InlineData(Both, "ABC is a triangle", "AB: 7 m, angle BAC: 50°, angle ABC: 60°", "distance from C to AB")]
    public void WhereSeveralAccept_TheyAreListedOnTheFirstLine(string topics, string figure, string given, string find)
    {
        ProblemError error = Assert.Single(Assert.IsType<Refused>(Solve(figure, given, find)).Errors);
        Assert.Equal((ErrorCodes.WhichTopic, 1), (error.Code, error.Lines.Single()));
        Assert.Contains(topics, new Renderer().Say(error), StringComparison.Ordinal);
        foreach (string topic in topics.Split(", ")) Assert.IsType<Solved>(new Solver().Solve(Read($"topic: {topic}\n", figure, given, find)));
    }

    [Theory]
    [InlineData("ABCD is a square", "AB: 7 cm", "AC")]
    [InlineData("ABC is a triangle", "AB: 7 cm, BC: 7 cm, CA: 7 cm", "prove angle ABC = angle BCA")]
    [InlineData("tether at O", "tether: 7 m", "area of region")]
    public void WhereNoneAccepts_ItIsNotSupported(string figure, string given, string find)
    {
        ProblemError error = Assert.Single(Assert.IsType<Refused>(Solve(figure, given, find)).Errors);
        Assert.Equal((ErrorCodes.NotSupported, 3), (error.Code, error.Lines.Single()));
    }

    [Fact]
    public void WhatIsWrongWithTheFile_IsSaidFirst() =>
        Assert.Equal([ErrorCodes.UnknownPoint], Ask.Codes(Solve("ABC is a triangle", "AB: 7 cm, BC: 8 cm, CA: 9 cm", "angle ABD")));

    [Fact]
    public void AProblemOfAProgram_HasNoLines()
    {
        Problem problem = Problem.About().Figure("ABC is a triangle").Given("AB", "7 m").Given("angle BAC", "50°").Given("angle ABC", "60°").Find("BC");
        Assert.Empty(Assert.Single(Assert.IsType<Refused>(new Solver().Solve(problem)).Errors).Lines);
    }

    private static SolveResult Solve(string figure, string given, string find) => new Solver().Solve(Read("", figure, given, find));

    private static Problem Read(string topic, string figure, string given, string find) => Problem.Read($"{topic}figure: {figure}\ngiven: {{{given}}}\nfind: {find}\n", "asked.yaml");
}
