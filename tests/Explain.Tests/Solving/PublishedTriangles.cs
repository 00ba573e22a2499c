using System.Globalization;
using Explain.Tests.Published;

namespace Explain.Tests.Solving;

/// <summary>Triangles of books, each with its source beside it: the answer is the printed one, or the right one where the book slipped.</summary>
public sealed class PublishedTriangles
{
    /// <summary>What is no question about a triangle in the words of a problem file.</summary>
    private static readonly Dictionary<string, string> NotAsked = new()
    {
        ["TRI-045.1"] = "a parallelogram", ["TRI-057.1"] = "a parallelogram", ["TRI-057.2"] = "a parallelogram",
        ["TRI-076.1"] = "the square of a side", ["TRI-078.1"] = "the ratio of two sides is given",
    };

    public static TheoryData<string> Ids => [.. PublishedRow.All("published-triangles").Select(r => r.Id).Where(id => !NotAsked.ContainsKey(id))];

    [Theory]
    [MemberData(nameof(Ids))]
    public void TheAnswer_IsThatOfTheSource(string id)
    {
        PublishedRow row = PublishedRow.All("published-triangles").Single(r => r.Id == id);
        string[] parts = row.Givens.Split("; ");
        string figure = string.Join(", ", parts.Where(p => !p.Contains('=')).Select(p => $"\"{p}\""));
        string find = row.Find.Replace(" (exact)", "", StringComparison.Ordinal);
        SolveResult result = Ask.Text("solve a triangle", $"[{figure}]", parts.Where(p => p.Contains('=')).Select(p => (p.Split('=')[0], p.Split('=')[1])), find);
        if (row.Recomputed.StartsWith("contradiction", StringComparison.Ordinal))
        {
            Assert.Equal(["contradiction"], Ask.Codes(result));
            return;
        }

        Assert.True(result is Solved, string.Join(" ", Ask.Codes(result)));
        Value answer = Assert.Single(((Solved)result).Solution.Parts[0].Answers[0].Values).Value!;
        if (find == "number of triangles") Assert.Equal(row.IsRight ? row.Expected : row.Recomputed, answer.Exact!.ToString());
        else if (row.Find.EndsWith("(exact)", StringComparison.Ordinal)) Assert.Equal(Read(row.Expected).Exact, answer.Exact);
        else Near(row, answer);
    }

    [Fact]
    public void TheSquareOfASide_IsRightWhereTheBookSlipped()
    {
        PublishedRow row = PublishedRow.All("published-triangles").Single(r => r.Id == "TRI-076.1");
        double side = Ask.Values(Ask.Triangle([("CA", "97.85 ft"), ("AB", "106.66 ft"), ("angle BAC", "73° 19′ 27″")], "BC"), "BC")[0];
        Assert.False(row.IsRight);
        Assert.Equal(Read(row.Recomputed).Number, side * side, 1e-6);
    }

    /// <summary>Within the tolerance of the book, or to ten figures of the right value.</summary>
    private static void Near(PublishedRow row, Value answer)
    {
        Value expected = Read(row.IsRight ? row.Expected : row.Recomputed), right = Read(row.Recomputed);
        double tolerance = !row.IsRight || row.Tolerance == "exact" ? Math.Abs(expected.Number) * 1e-10 : Tolerance(row.Tolerance);
        Assert.Equal(expected.Number, answer.In(expected.Unit).Number, tolerance * (1 + 1e-9));
        Assert.Equal(right.Number, answer.In(right.Unit).Number, right.Unit.IsAngle ? 0.005 / 3600 : Math.Abs(right.Number) * 1e-10);
    }

    private static double Tolerance(string typed) => typed.EndsWith('′')
        ? double.Parse(typed[..^1], CultureInfo.InvariantCulture) / 60 : double.Parse(typed, CultureInfo.InvariantCulture);

    private static Value Read(string typed) => ValueReader.TryRead(typed.Replace(",", "", StringComparison.Ordinal), out GivenValue? value, out _)
        ? ((Evaluated)Evaluator.Evaluate(value!.Is)).Value : throw new InvalidOperationException(typed);
}
