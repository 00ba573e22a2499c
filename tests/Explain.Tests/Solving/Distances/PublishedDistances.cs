using System.Globalization;
using Explain.Tests.Published;

namespace Explain.Tests.Solving.Distances;

/// <summary>Indirect measurements that books print, each with its source in the table; what no statement of a problem file can say is listed with the reason.</summary>
public sealed class PublishedDistances
{
    /// <summary>Rows that are not distances from a baseline, or that a problem file cannot state.</summary>
    private static readonly Dictionary<string, string> Elsewhere = new()
    {
        ["IND-007.1"] = "the length given holds a tangent, which a value cannot",
        ["IND-017.1"] = "an eye height is added, and no statement puts two heights end to end at different places",
        ["IND-020.1"] = "one length is given as another and 3 mi more",
        ["IND-022.1"] = "a speed",
        ["IND-027.1"] = "similar triangles from lengths alone",
        ["IND-028.1"] = "similar triangles from lengths alone",
        ["IND-029.1"] = "similar triangles from lengths alone",
        ["IND-030.1"] = "similar triangles from lengths alone",
        ["IND-031.1"] = "the scale of a map",
        ["IND-035.1"] = "a sum of two lengths",
        ["IND-035.2"] = "a sum of two lengths",
        ["IND-037.1"] = "equal heights at unknown distances: an equation in an unknown",
        ["IND-037.2"] = "equal heights at unknown distances: an equation in an unknown",
    };

    /// <summary>Printed values that are slips of rounding too early; the table's own value by double precision stands instead.</summary>
    private static readonly Dictionary<string, string> Misprinted = new() { ["IND-010.2"] = "1999.77699241 ft", ["IND-010.3"] = "4637.175 ft", ["IND-010.4"] = "4637.175 ft" };

    private static readonly IReadOnlyList<PublishedRow> Rows = PublishedRow.All("published-indirect-measurement");

    public static TheoryData<string> Ids => [.. Rows.Select(r => r.Id).Where(id => !Elsewhere.ContainsKey(id))];

    [Theory]
    [MemberData(nameof(Ids))]
    public void TheAnswer_IsThatOfTheBook(string id)
    {
        PublishedRow row = Rows.Single(r => r.Id == id);
        string find = row.Find.Replace(" (exact)", "", StringComparison.Ordinal);
        SolveResult result = new Solver().Solve(Problem.Read(Text(row, find), id + ".yaml"));
        Assert.True(result is Solved, id + " " + string.Join(" ", Ask.Codes(result)) + (result is Failed failed ? string.Join(" ", failed.Findings) : ""));
        Value value = ((Solved)result).Solution.Parts[0].Answers[0].Values[0].Value!;
        Assert.True(ValueReader.TryRead(Misprinted.GetValueOrDefault(id, row.Expected).Replace(",", "", StringComparison.Ordinal), out GivenValue? expected, out _));
        Value printed = ((Evaluated)Evaluator.Evaluate(expected!.Is)).Value;
        if (row.Tolerance == "exact") Assert.Equal(printed.Exact, value.In(printed.Unit).Exact);
        else Assert.Equal(printed.Number, value.In(printed.Unit).Number, double.Parse(row.Tolerance, CultureInfo.InvariantCulture));
    }

    [Fact]
    public void EveryRow_IsTestedOrSaidToBelongElsewhere()
    {
        Assert.Equal(47, Rows.Count);
        Assert.All(Elsewhere.Keys.Concat(Misprinted.Keys), id => Assert.Contains(Rows, r => r.Id == id));
        Assert.All(Rows, r => Assert.NotEmpty(r.Source));
    }

    private static string Text(PublishedRow row, string find)
    {
        string[] parts = row.Givens.Split("; ");
        string[] figure = [.. parts.Where(p => !p.Contains('=', StringComparison.Ordinal)), .. find.Contains(" where ", StringComparison.Ordinal) ? [find.Split(" where ")[1]] : (string[])[]];
        string[] given = [.. parts.Where(p => p.Contains('=', StringComparison.Ordinal)).Select(p => p.Replace("=", ": ", StringComparison.Ordinal))];
        return $"topic: inaccessible distance\nfigure:\n{string.Concat((figure.Length == 0 ? ["ABC is a triangle"] : figure).Select(f => $"  - \"{f}\"\n"))}given:\n{string.Concat(given.Select(g => $"  {g}\n"))}find: {find.Split(" where ")[0]}\n";
    }
}
