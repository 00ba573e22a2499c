using System.Globalization;
using System.Text.RegularExpressions;
using Explain.Tests.Published;

namespace Explain.Tests.Solving.Distances;

/// <summary>The rows of the table of bounds that a baseline gives: values, bounds and how they are printed, and the values at corners alone that must not be printed.</summary>
public sealed partial class BoundsOfDistances
{
    private static readonly Dictionary<string, AnswerValue> Known = [];

    private static readonly PublishedRow[] Rows = [.. PublishedRow.All("bounds").Where(r => r.Givens.StartsWith("triangle PQT; ", StringComparison.Ordinal))];

    public static TheoryData<string> Ids => [.. Rows.Select(r => r.Id)];

    public static TheoryData<int> Apexes => [120, 90, 60, 30, 20, 10];

    [Theory]
    [MemberData(nameof(Ids))]
    public void ABound_IsThatOfTheTable(string id)
    {
        PublishedRow row = Rows.Single(r => r.Id == id);
        AnswerValue answer = Bounds(row);
        double expected = double.Parse(row.Expected, CultureInfo.InvariantCulture);
        Rounding rule = new(RoundingKind.DecimalPlaces, 0);
        switch (id[^1])
        {
            case 'v': Near(expected, answer.Value!); break;
            case 'l': Near(expected, answer.Bounds!.Lower); break;
            case 'u': Near(expected, answer.Bounds!.Upper); break;
            case 'L': Assert.Equal(row.Expected, NumberText.LowerBound(answer.Bounds!.Lower, rule).Digits); break;
            case 'U': Assert.Equal(row.Expected, NumberText.UpperBound(answer.Bounds!.Upper, rule).Digits); break;
            default: Assert.True(answer.Bounds!.Lower.Number < expected - 0.1, "the corners alone"); break;
        }
    }

    [Theory]
    [MemberData(nameof(Apexes))]
    public void TheExcessAndTheShortfall_AreThoseOfTheTable(int apex)
    {
        string half = ((180 - apex) / 2).ToString(CultureInfo.InvariantCulture);
        AnswerValue answer = Bounds($"F{apex}", "distance from T to PQ", $"PQ = 100 m; angle QPT = {half}° ± 1°; angle PQT = {half}° ± 1°");
        double Percent(Value end) => 100 * (end.Number / answer.Value!.Number - 1);
        Assert.Equal(Expected($"F{apex}u"), Percent(answer.Bounds!.Upper), 1e-8);
        Assert.Equal(-Expected($"F{apex}l"), Percent(answer.Bounds!.Lower), 1e-8);
    }

    private static double Expected(string id) => double.Parse(PublishedRow.All("bounds").Single(r => r.Id == id).Expected, CultureInfo.InvariantCulture);

    private static void Near(double expected, Value value) => Assert.Equal(expected, value.Number, Math.Abs(expected) * 1e-11);

    private static AnswerValue Bounds(PublishedRow row) => Bounds(row.Id[..^1], row.Find.Contains("PF", StringComparison.Ordinal) ? "PF" : Quantity().Match(row.Find).Value.Replace("the line ", "", StringComparison.Ordinal).Trim(),
        row.Givens["triangle PQT; ".Length..]);

    private static AnswerValue Bounds(string key, string of, string givens)
    {
        lock (Known)
        {
            if (Known.TryGetValue(key, out AnswerValue? known)) return known;
            string figure = of == "PF" ? "[PQT is a triangle, F is the foot of the perpendicular from T to PQ]" : "PQT is a triangle";
            SolveResult result = Ask.Text("inaccessible distance", figure, [.. givens.Split("; ").Select(g => (g.Split(" = ")[0], g.Split(" = ")[1]))], "bounds of " + of);
            Assert.True(result is Solved, key + string.Join(" ", Ask.Codes(result)) + (result is Failed failed ? string.Join(" ", failed.Findings) : ""));
            return Known[key] = ((Solved)result).Solution.Parts[0].Answers[0].Values[0];
        }
    }

    [GeneratedRegex("^[^(:]*(?= \\(m\\))")]
    private static partial Regex Quantity();
}
