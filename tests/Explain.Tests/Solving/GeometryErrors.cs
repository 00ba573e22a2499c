using Explain.Tests.Reading;

namespace Explain.Tests.Solving;

/// <summary>What is said of measurements that make no figure: the numbers, the lines at fault and no others, and what to do.</summary>
public sealed class GeometryErrors
{
    [Theory]
    [InlineData("AB: 5 ft 3 in|BC: 1 ft|CA: 2 ft", "4,5,6: AB = 63 in, BC = 1 ft and CA = 2 ft do not make a triangle. The longest side must be shorter than the sum of the other two, but 12 + 24 = 36, and 36 is less than 63. The arcs drawn from A and B would not meet | check the three lengths [no-triangle]")]
    [InlineData("angle ABC: 50°|BC: √2 cm|CA: 1 cm|AB: 9 cm", "5,6,7: BC = √2 cm, CA = 1 cm and AB = 9 cm do not make a triangle. The longest side must be shorter than the sum of the other two, but √2 + 1 = 2.41421…, and 2.41421… is less than 9. The arcs drawn from A and B would not meet | check the three lengths [no-triangle]")]
    [InlineData("angle BAC: 30°|AC: 2.5 m|CB: 1.2 m", "4,5,6: there is no triangle with angle BAC = 30°, AC = 2.5 m and CB = 1.2 m. The shortest distance from C to the line AB is 2.5 × sin 30° = 1.25 m, and CB is shorter than that | CB must be at least 1.25 m [does-not-reach]")]
    [InlineData("angle BAC: 120°|AC: 2.5 m|CB: 2.5 m", "4,5,6: there is no triangle with angle BAC = 120°, AC = 2.5 m and CB = 2.5 m. The side opposite an angle of 90° or more is the longest, but CB is not longer than AC | CB must be longer than 2.5 m [does-not-reach]")]
    [InlineData("angle BCA: 20°|AB: 5 m|angle BAC: 112°|angle ABC: 68°", "6,7: the rays from A and B do not meet: angle BAC + angle ABC = 112° + 68° = 180°, but two angles of a triangle add up to less than 180° | was one of them measured from the other direction along the baseline? 180° − 112° = 68° [rays-do-not-meet]")]
    [InlineData("angle BCA: 20°|AB: 5 m|angle BAC: 60°|angle ABC: 68°", "7: angle ABC = 68° contradicts lines 4 and 6. The angles of triangle ABC would add up to 60° + 20° + 68° = 148°, but they must add up to 180° | remove one of the three, or correct it. From lines 4 and 6, angle ABC is 100° [contradiction]")]
    [InlineData("AB: 3 m|angle ABC: 91°|BC: 4 m|CA: 5 m", "7: CA = 5 m contradicts lines 4, 5 and 6: from lines 4, 5 and 6, CA is 5.041… m | remove one of them, or correct it [contradiction]")]
    [InlineData("angle ABC: 90°|AB: 3 m|BC: 4 m|CA: 5 m|angle BCA: 40°", "8: angle BCA = 40° contradicts lines 4, 5 and 6: from lines 4, 5 and 6, angle BCA is 36.869…° | remove one of them, or correct it [contradiction]")]
    public void AFigureThatCannotBe_IsExplained(string given, string said)
    {
        string text = $"topic: solve a triangle\nfigure: ABC is a triangle\ngiven:\n{string.Concat(given.Split('|').Select(g => $"  {g}\n"))}find: angle BCA\n";
        string find = given.Contains("angle BCA", StringComparison.Ordinal) ? "AC" : "angle BCA";
        Assert.Equal(said, TestFile.Said(Assert.IsType<Refused>(new Solver().Solve(TestFile.Read(text.Replace("find: angle BCA", "find: " + find, StringComparison.Ordinal)))).Errors.Single()));
    }

    [Fact]
    public void InAProgram_TheOthersAreNamedByWhatTheySay()
    {
        Problem problem = Problem.About("solve a triangle").Figure("ABC is a triangle").Given("AB", "5 m").Given("angle BAC", "60°").Given("angle ABC", "68°").Given("angle BCA", "20°").Find("AC");
        string said = TestFile.Said(Assert.IsType<Refused>(new Solver().Solve(problem)).Errors.Single());
        Assert.StartsWith(": angle BCA = 20° contradicts angle BAC = 60° and angle ABC = 68°. The angles", said, StringComparison.Ordinal);
    }

    /// <summary>Some of the givens clash: they alone are named, and the last of them is at fault.</summary>
    [Theory]
    [InlineData("AB: 6 cm|BC: 6 cm|angle ABC: 60°|CA: 7 cm|angle BAC: 60°", "angle BCA", "7: CA = 7 cm contradicts lines 4, 5 and 6")]
    [InlineData("AB: 6 cm|angle BAC: 50°|angle ABC: 60°|angle BCA: 70°|CA: 9 cm", "BC", "8: CA = 9 cm contradicts lines 4, 5 and 6")]
    public void TheSmallestSetThatClashes_IsNamed(string given, string find, string said)
    {
        SolveResult result = new Solver().Solve(TestFile.Read($"topic: solve a triangle\nfigure: ABC is a triangle\ngiven:\n{string.Concat(given.Split('|').Select(g => $"  {g}\n"))}find: {find}\n"));
        Assert.StartsWith(said + ":", TestFile.Said(Assert.IsType<Refused>(result).Errors.Single()), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("construct a triangle", "figure: ABC is a triangle\ngiven: {AB: 9 cm, BC: 3 cm, CA: 3 cm}\nfind: construction\n", "3 no-triangle")]
    [InlineData("construct a triangle", "figure: ABC is a triangle\ngiven: {AB: 9 cm, BC: (x + 3) cm, CA: 3 cm}\nfind: construction\n", "1 not-supported")]
    [InlineData("equal shares", "figure: ABCD is a parallelogram\ngiven: {AB: 9 cm, AD: 0.08 m, shares: 3}\nfind: cuts\n", "2 method-does-not-apply")]
    [InlineData("equal shares", "figure: ABCD is a parallelogram\ngiven: {AB: 9 cm, AD: 0.09 m, shares: 3}\nfind: cuts\n", "1 not-supported")]
    [InlineData("equal shares", "figure: ABCD is a rhombus\ngiven: {AB: 9 cm, shares: 3}\nfind: cuts\n", "1 not-supported")]
    [InlineData("tether", "figure: [\"ABCDE is a polygon, reflex at C, D\", \"tether at A, outside ABCDE\"]\ngiven: {tether: 9 m}\nfind: region\n", "2 not-supported")]
    [InlineData("tether", "figure: [ABCD is a square, \"tether at A, outside ABCD\"]\ngiven: {tether: 9 m, AB: 3 m}\nfind: region\n", "1 not-supported")]
    public void AKindOfProblemThatIsNotSolved_IsRefusedForItsFigureFirst(string topic, string text, string said)
    {
        ProblemError error = UnsolvedTopic.Refuse(TestFile.Read($"topic: {topic}\n{text}"), KnownTopics.Find(new(topic))!);
        Assert.Equal(said, $"{error.Lines[0]} {error.Code}");
    }

    [Fact]
    public void AKindOfProblemThatIsKnown_IsToldFromOneThatDoesNotExist()
    {
        string[] Codes(string topic) => Ask.Codes(new Solver().Solve(TestFile.Read($"topic: {topic}\nfigure: ABC is a triangle\ngiven: {{AB: 9 cm}}\nfind: [BC, why equal angles are not fair]\n")));
        foreach (KnownTopic known in KnownTopics.All) Assert.Equal([ErrorCodes.NotSupported], Codes(known.Id.Name));
        Assert.Equal([ErrorCodes.UnknownTopic], Codes("juggling"));
        Assert.All(Topics.Standard.All, t => Assert.NotNull(KnownTopics.Find(t.Id)));
    }
}
