using System.Globalization;
using System.Text.RegularExpressions;
using Explain.Tests.Published;
using Fractions;
using static Explain.Tests.Formulas.BoundsCases;
using static Explain.Tests.Formulas.Make;

namespace Explain.Tests.Formulas;

public sealed partial class ExtremesTests
{
    private static readonly Dictionary<string, Bounded> Found = BoundsCases.All.ToDictionary(c => c.Key, c => Assert.IsType<Bounded>(Extremes.Of(c.Value.Formula, c.Value.Box)));

    public static TheoryData<string> Rows => [.. PublishedRow.All("bounds").Select(r => r.Id)];

    [Theory]
    [MemberData(nameof(Rows))]
    public void Every_row_of_the_table_of_bounds_is_met(string id)
    {
        PublishedRow row = PublishedRow.All("bounds").Single(r => r.Id == id);
        (string problem, char kind) = (id[..^1], id[^1]);
        Bounded bounded = Found[problem];
        bool upper = row.Find.Contains("upper", StringComparison.Ordinal);
        (Expr formula, Items<BoxSide> box) = BoundsCases.All[problem];
        Extreme end = upper ? bounded.Greatest : bounded.Least;
        switch (kind)
        {
            case 'v':
                Near(row.Expected, Evaluated(At(formula, box, s => s.Middle)).True);
                break;
            case 'l' or 'u':
                Near(row.Expected, problem[0] == 'F' && kind == 'l' ? -end.Value.True : end.Value.True);
                break;
            case 'L' or 'U':
                Rounding places = new(RoundingKind.DecimalPlaces, int.Parse(Printed().Match(row.Find).Groups[1].Value, CultureInfo.InvariantCulture) - 1);
                Shown shown = upper ? NumberText.UpperBound(end.Value, places) : NumberText.LowerBound(end.Value, places);
                Assert.Equal(Fraction.FromString(row.Expected, CultureInfo.InvariantCulture), Fraction.FromString(shown.Digits, CultureInfo.InvariantCulture));
                break;
            default:
                Enclosure wrong = Corners(formula, box).Aggregate((a, b) => Enclosure.Less(a, b) == upper ? b : a);
                if (kind == 'w') Near(row.Expected, wrong);
                Assert.Equal(upper, Enclosure.Less(Number(row.Expected), end.Value.True));
                break;
        }
    }

    [Fact]
    public void Directions_are_those_of_the_figure()
    {
        Assert.Equal([Direction.Rises, Direction.Rises, Direction.Rises], Directions("B01"));
        Assert.Equal([Direction.Rises, Direction.Falls, Direction.Rises], Directions("B04", "c", "A", "B"));
        Assert.Equal([Direction.Rises, Direction.Neither, Direction.Rises], Directions("B10", "c", "A", "B"));
        Assert.Equal([Direction.Rises, Direction.Neither], Directions("B17", "a", "A"));
        Assert.Equal([Direction.Rises, Direction.Falls, Direction.Rises], Directions("B19", "b", "c", "e"));
        Assert.True(Found["B01"].IsMonotone);
        Assert.False(Found["B34"].IsMonotone);
    }

    [Fact]
    public void What_is_exact_is_exact()
    {
        Assert.Equal(Exact.Of(Fraction.FromString("617.625")), Found["B12"].Greatest.Value.Exact);
        Assert.Equal(Exact.Of(30), Found["B16"].Greatest.Value.Exact);
        Assert.Equal(Exact.Of(30), Found["B32"].Greatest.Value.Exact);
        Assert.Equal(Exact.Of(Fraction.FromString("11.9")), Found["B17"].Least.Value.Exact);
        Assert.Equal(Exact.Multiply(Exact.Of(75), Exact.Root(Exact.Of(3))!), Found["B34"].Greatest.Value.Exact);
        Assert.Equal(0, Evaluator.Compare(Found["B10"].Least.Closed!, 999 * Make.M("1") * Sin(Deg("28"))));
        Assert.Equal(0, Evaluator.Compare(Found["B14"].Greatest.Closed!, ArcSin(Make.Number(new Fraction(13, 19)))));
    }

    [Fact]
    public void The_place_inside_is_found()
    {
        Assert.Equal([Exact.Of(60), Exact.Of(60)], Found["B34"].Greatest.At.Select(l => l.At.Exact));
        Assert.Equal(Exact.Root(Exact.Of(12)), Found["B32"].Greatest.At.Single().At.Exact);
        Assert.Equal(Value.Of(Exact.Of(62), Unit.Degree), Found["B10"].Least.At.Single(l => l.Of.Equals(new Letter("A"))).At);
        Near("27.2044", Found["B15"].Greatest.At.Single(l => l.Of.Equals(new Letter("b"))).At.True);
    }

    private static Direction[] Directions(string problem, params string[] letters) => letters.Length == 0
        ? [.. Found[problem].Trends.Select(t => t.Direction)]
        : [.. letters.Select(l => Found[problem].Trends.Single(t => t.With.Equals(new Letter(l))).Direction)];

    private static IEnumerable<Enclosure> Corners(Expr formula, Items<BoxSide> box) => Enumerable.Range(0, 1 << box.Count)
        .Select(corner => Evaluated(At(formula, box, s => (corner >> box.ToList().IndexOf(s) & 1) == 0 ? s.Low : s.High)).True);

    private static Expr At(Expr formula, Items<BoxSide> box, Func<BoxSide, Fraction> where) =>
        box.Aggregate(formula, (all, s) => all.Replace(s.Of, new Quantity(Exact.Of(where(s)), s.Unit)));

    private static Value Evaluated(Expr expr) => Assert.IsType<Evaluated>(Evaluator.Evaluate(expr)).Value;

    private static void Near(string expected, Enclosure value)
    {
        Enclosure difference = value - Number(expected);
        Fraction half = new Fraction(1, 2) / Fraction.Pow(10, expected.Length - expected.IndexOf('.', StringComparison.Ordinal) - 1);
        Assert.True(difference.High <= half && difference.Low >= -half, $"{expected} {value}");
    }

    private static Enclosure Number(string text) => Enclosure.Of(Fraction.FromString(text, CultureInfo.InvariantCulture), 192);

    [GeneratedRegex("printed to ([0-9]+) d.p.")]
    private static partial Regex Printed();
}
