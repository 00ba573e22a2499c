namespace Explain.Tests.Solving;

/// <summary>What is asked for although it is given, or is the same in every triangle that fits.</summary>
public sealed class GivenAgain
{
    private static readonly (string, string)[] TwoTriangles = [("angle BAC", "38°"), ("AC", "2.5 m"), ("CB", "1.8 m")];

    [Theory]
    [InlineData("angles of ABC")]
    [InlineData("sides of ABC")]
    [InlineData("triangle ABC")]
    [InlineData("BC")]
    public void InTwoTriangles_IsAnsweredInEach(string find) => Assert.IsType<Solved>(Ask.Triangle(TwoTriangles, find, "AB"));

    [Theory]
    [InlineData("distance from C to AB")]
    [InlineData("radius of the circle through ABC")]
    public void TheSameInBothTriangles_IsOneAnswer(string find) => Assert.Single(Ask.Values(Ask.Triangle(TwoTriangles, find), find));

    [Theory]
    [InlineData("area of ABC", "12 cm²", "angle ACB", "40°")]
    [InlineData("radius of the inscribed circle of ABC", "1.5 cm", "perimeter of ABC", "20 cm")]
    public void WhatFixesATriangle_ThoughNoRuleLeadsToIt_IsNotCalledTooLittle(string first, string is1, string second, string is2) =>
        Assert.Equal(["not-supported"], Ask.Codes(Ask.Triangle([(first, is1), (second, is2), ("AB", "6 cm")], "BC")));

    [Fact]
    public void AnAreaAndTwoSides_HaveTwoTriangles() =>
        Assert.Equal(2, Ask.Values(Ask.Triangle([("area of ABC", "12 cm²"), ("AB", "6 cm"), ("AC", "5 cm")], "BC"), "BC").Length);
}
