using System.Globalization;

namespace Explain.Tests.Solving;

/// <summary>Right-angled, isosceles and equilateral triangles drawn as coordinates: what is not given comes out again, by the rules a teacher would name.</summary>
public sealed class SpecialTriangleTests
{
    private const string Topic = "solve a triangle";
    private static readonly int Draws = Effort.Of(5, 25, 500);
    private static readonly string[] ForAnyTriangle = ["sine-rule", "cosine-rule"];

    [Theory]
    [InlineData("ABC is a triangle, right-angled at B")]
    [InlineData("triangle ABC is right-angled at B")]
    [InlineData("[ABC is a triangle, angle ABC is a right angle]")]
    [InlineData("[ABC is a triangle, AB ⊥ BC]")]
    [InlineData("[ABC is a triangle, angle ABC = 90°]")]
    public void ARightAngledTriangle_IsSolvedByItsOwnRules(string figure)
    {
        Random random = new(11);
        for (int i = 0; i < Draws; i++)
        {
            double p = random.Next(10, 400), q = random.Next(10, 400), degrees = random.Next(5, 86), a = degrees * Math.PI / 180;
            Solves(figure, [("AB", Cm(p)), ("BC", Cm(q))], ("CA", Math.Sqrt(p * p + q * q)), ("angle BAC", Math.Atan2(q, p) * 180 / Math.PI), ("angle BCA", Math.Atan2(p, q) * 180 / Math.PI));
            Solves(figure, [("AB", Cm(p)), ("CA", Cm(p + q))], ("BC", Math.Sqrt(q * (2 * p + q))), ("angle BCA", Math.Asin(p / (p + q)) * 180 / Math.PI), ("angle BAC", Math.Acos(p / (p + q)) * 180 / Math.PI));
            Solves(figure, [("AB", Cm(p)), ("angle BAC", degrees + "°")], ("BC", p * Math.Tan(a)), ("CA", p / Math.Cos(a)), ("angle BCA", 90 - degrees));
            Solves(figure, [("CA", Cm(p)), ("angle BAC", degrees + "°")], ("BC", p * Math.Sin(a)), ("AB", p * Math.Cos(a)));
            Solves(figure, [("BC", Cm(p)), ("angle BAC", degrees + "°")], ("AB", p / Math.Tan(a)), ("CA", p / Math.Sin(a)));
        }
    }

    [Theory]
    [InlineData("ABC is a triangle, isosceles with AB = AC")]
    [InlineData("[ABC is a triangle, AB = AC]")]
    [InlineData("[ABC is a triangle, angle ABC = angle ACB]")]
    public void AnIsoscelesTriangle_HasEqualSidesAndBaseAngles(string figure)
    {
        Random random = new(12);
        for (int i = 0; i < Draws; i++)
        {
            double apex = random.Next(1, 89) * 2, side = random.Next(10, 400), foot = (180 - apex) / 2, half = side * Math.Sin(apex * Math.PI / 360);
            (string, double)[] angles = [("angle ABC", foot), ("angle ACB", foot)];
            Solves(figure, [("AB", Cm(side)), ("angle BAC", apex + "°")], [("AC", side), ("BC", 2 * half), .. angles]);
            Solves(figure, [("BC", Cm(side)), ("angle BAC", apex + "°")], [("AC", side * side / 2 / half), ("AB", side * side / 2 / half), .. angles]);
            Solves(figure, [("AC", Cm(side)), ("angle ABC", foot + "°")], ("AB", side), ("BC", 2 * half), ("angle BAC", apex), ("angle ACB", foot));
            Solves(figure, [("BC", Cm(side)), ("angle ACB", foot + "°")], ("AB", side * side / 2 / half), ("angle BAC", apex), ("angle ABC", foot));
        }
    }

    [Theory]
    [InlineData("ABC is an equilateral triangle")]
    [InlineData("ABC is a regular triangle")]
    [InlineData("[ABC is a triangle, AB = BC = CA]")]
    public void AnEquilateralTriangle_IsFixedByOneSide(string figure) =>
        Solves(figure, [("AB", "7.5 cm")], ("BC", 7.5), ("CA", 7.5), ("angle ABC", 60), ("distance from A to BC", 7.5 * Math.Sqrt(3) / 2));

    [Theory]
    [InlineData("ABC is a triangle, right-angled at B", "AB: 5 cm, BC: 12 cm", "CA", "pythagoras")]
    [InlineData("ABC is a triangle, right-angled at B", "AB: 5 cm, BC: 12 cm", "angle BAC", "tangent-ratio angle-from-tangent")]
    [InlineData("ABC is a triangle, right-angled at B", "AB: 5 cm, CA: 13 cm", "angle BCA", "sine-ratio acute-angle-from-sine")]
    [InlineData("ABC is a triangle, right-angled at B", "AB: 5 cm, CA: 13 cm", "angle BAC", "cosine-ratio angle-from-cosine")]
    [InlineData("ABC is a triangle", "angle ABC: 32°, angle BAC: 58°, AB: 10 cm", "BC", "angle-sum-of-a-triangle sine-ratio")]
    [InlineData("ABC is a triangle", "angle ABC: 32°, angle BAC: 57°, AB: 10 cm", "BC", "angle-sum-of-a-triangle sine-rule")]
    [InlineData("ABC is a triangle", "AB: 3 cm, BC: 4 cm, CA: 5 cm", "angle ABC", "pythagoras-converse")]
    [InlineData("ABC is a triangle", "AB: 3 cm, BC: 4 cm, CA: 5.000001 cm", "angle ABC", "cosine-rule angle-from-cosine")]
    [InlineData("ABC is a triangle", "angle BAC: 40°, angle ABC: 70°, AC: 6 cm", "AB", "angle-sum-of-a-triangle isosceles-triangle-converse")]
    [InlineData("ABC is a triangle", "AB: 6 cm, AC: 6 cm, angle BAC: 40°", "angle ABC", "isosceles-angle-sum")]
    [InlineData("ABC is an equilateral triangle", "AB: 5 cm", "angle BAC", "equilateral-triangle-angles")]
    public void TheRuleOfATeacher_IsTaken(string figure, string given, string find, string rules)
    {
        Solution solution = Solution(figure, [.. given.Split(", ").Select(g => (g.Split(": ")[0], g.Split(": ")[1]))], find);
        Assert.Equal(rules, string.Join(' ', solution.Parts[0].Passages.Where(p => p.Use == PassageUse.Working).SelectMany(p => p.Steps).Select(s => s.Why.Rule.Name)));
    }

    [Theory]
    [InlineData("ABC is a triangle, isosceles with AB = AC", "angle ABC: 95°, BC: 4 cm", "rays-do-not-meet")]
    [InlineData("ABC is a triangle, isosceles with AB = AC", "AB: 5 cm, BC: 12 cm", "no-triangle")]
    [InlineData("ABC is a triangle, isosceles with AB = AC", "AB: 5 cm, BC: 10 cm", "flat-triangle")]
    [InlineData("ABC is a triangle, isosceles with AB = AC", "AB: 5 cm, AC: 6 cm, BC: 4 cm", "contradiction")]
    [InlineData("ABC is a triangle, right-angled at B", "AB: 5 cm, CA: 5 cm", "does-not-reach")]
    [InlineData("ABC is a triangle, right-angled at B", "AB: 5 cm, angle BAC: 90°", "rays-do-not-meet")]
    [InlineData("ABC is an equilateral triangle", "AB: 5 cm, angle ABC: 50°", "contradiction")]
    [InlineData("ABC is a triangle, right-angled at B", "AB: 5 cm", "not-enough-data")]
    [InlineData("ABC is a triangle, isosceles with AB = AC", "angle ABC: 50°", "not-enough-data")]
    public void WhatCannotBe_IsRefused(string figure, string given, string code) =>
        Assert.Equal([code], Ask.Codes(Ask.Text(Topic, figure, given.Split(", ").Select(g => (g.Split(": ")[0], g.Split(": ")[1])), "angle BCA", given.StartsWith("angle", StringComparison.Ordinal) ? "AC" : "angle CBA")));

    private static string Cm(double length) => length.ToString("R", CultureInfo.InvariantCulture) + " cm";

    private static void Solves(string figure, (string, string)[] given, params (string Of, double Is)[] wanted)
    {
        Solution solution = Solution(figure, given, [.. wanted.Select(w => w.Of)]);
        foreach ((string of, double expected) in wanted) Assert.Equal(expected, Assert.Single(Ask.Values(new Solved(solution), of)), expected * 1e-9);
        bool isRight = figure.Contains("right", StringComparison.Ordinal) || figure.Contains('⊥', StringComparison.Ordinal) || figure.Contains("90", StringComparison.Ordinal);
        if (isRight) Assert.DoesNotContain(solution.Parts[0].Passages.Where(p => p.Use == PassageUse.Working).SelectMany(p => p.Steps), s => ForAnyTriangle.Contains(s.Why.Rule.Name));
    }

    private static Solution Solution(string figure, (string, string)[] given, params string[] find)
    {
        SolveResult result = Ask.Text(Topic, figure, given, find);
        return result is Solved solved ? solved.Solution : throw new InvalidOperationException($"{figure} {string.Join(" ", given)}: {string.Join(" ", Ask.Codes(result))} {string.Join(" ", (result as Failed)?.Findings.Select(f => f.Detail) ?? [])}");
    }
}
