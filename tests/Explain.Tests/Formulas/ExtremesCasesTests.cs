using Fractions;
using static Explain.Tests.Formulas.BoundsCases;
using static Explain.Tests.Formulas.Make;

namespace Explain.Tests.Formulas;

/// <summary>Extremes inside, on edges and at corners, boxes that leave the domain, and drawn boxes against a grid of values.</summary>
public sealed class ExtremesCasesTests
{
    private static readonly int Boxes = Effort.Of(30, 300);

    private static readonly (Expr A, Expr B, Expr C) Sides = (Letter("a"), Letter("b"), Letter("c"));
    private static readonly (Expr A, Expr B, Expr C) Angles = (Letter("A"), Letter("B"), Letter("C"));

    private static readonly Expr Area = Sides.A * Sides.B * Sin(Angles.C) / 2;
    private static readonly Expr ToT = Sides.C * Sin(Angles.B) / Sin(Angles.A + Angles.B);
    private static readonly Expr Circumradius = Sides.C / (2 * Sin(Deg("180") - Angles.A - Angles.B));

    [Fact]
    public void Area_with_a_right_angle_between_is_not_least_and_greatest_at_corners()
    {
        Bounded bounded = Of(Area, Exactly("a", 100), Exactly("b", 100), D("C", 90, 1));
        Assert.Equal(Value.Of(Exact.Of(5000), Unit.Metre.To(2)), bounded.Greatest.Value);
        Assert.InRange(bounded.Least.Value.Number, 4999.238, 4999.239);
        Assert.Equal([new Trend(new Letter("C"), Direction.Neither)], bounded.Trends);
    }

    [Fact]
    public void Least_distance_is_where_the_rays_are_perpendicular() =>
        Assert.InRange(Of(ToT, Exactly("c", 100), D("A", 30, 1), D("B", 60.5m, 1)).Least.Value.Number, 86.162, 86.163);

    [Fact]
    public void Angles_that_occur_in_one_sum_only_are_searched_as_one()
    {
        Bounded bounded = Of(Circumradius, M("c", 12, 0.5m), D("A", 40, 3), D("B", 48, 3));
        Assert.Equal(Exact.Of(new Fraction(23, 4)), bounded.Least.Value.Exact);
        Assert.Equal(Exact.Of(90), Exact.Add(bounded.Least.At.Single(l => l.Of.Equals(new Letter("A"))).At.Exact!, bounded.Least.At.Single(l => l.Of.Equals(new Letter("B"))).At.Exact!));
        Assert.Equal([Exact.Of(37), Exact.Of(45)], bounded.Greatest.At.Where(l => l.At.Unit.IsAngle).Select(l => l.At.Exact));
    }

    [Fact]
    public void A_sum_gives_its_direction_to_its_parts() => Assert.Equal(
        [new(new Letter("c"), Direction.Rises), new(new Letter("A"), Direction.Rises), new Trend(new Letter("B"), Direction.Falls)],
        Of(Sides.C * Sin(Angles.A - Angles.B), M("c", 3, 1), D("A", 60, 5), D("B", 20, 5)).Trends);

    [Fact]
    public void An_extreme_on_the_border_of_the_box_is_exact()
    {
        Bounded bounded = Of(ToT, Exactly("c", 999), Exactly("B", 28, Unit.Degree), new(new Letter("A"), new Fraction(61), new Fraction(62), Unit.Degree));
        Assert.Equal(Direction.Falls, Assert.Single(bounded.Trends).Direction);
        Assert.Equal(0, Evaluator.Compare(bounded.Least.Closed!, 999 * Make.M("1") * Sin(Deg("28"))));
    }

    [Fact]
    public void Both_ends_may_be_the_same_place_of_a_symmetrical_box()
    {
        Bounded bounded = Of(Sin(Angles.A), D("A", 90, 30));
        Assert.Equal(Exact.One, bounded.Greatest.Value.Exact);
        Assert.Equal(0, Evaluator.Compare(bounded.Least.Closed!, Root(Make.Number(new Fraction(3, 4)))));
    }

    [Fact]
    public void Without_a_width_there_is_one_value()
    {
        Bounded bounded = Of(Area, Exactly("a", 3), Exactly("b", 4), Exactly("C", 30, Unit.Degree));
        Assert.Equal((Exact.Of(3), Exact.Of(3), 0), (bounded.Least.Value.Exact, bounded.Greatest.Value.Exact, bounded.Trends.Count));
    }

    [Fact]
    public void Both_places_of_a_wave_are_told_apart()
    {
        // Two hollows, at 60° and 300°; the one at the end of the box is higher.
        Bounded bounded = Of(4 * Square(Cos(Angles.A)) - 4 * Cos(Angles.A), D("A", 180, 170));
        Assert.Equal((Exact.Of(-1), Exact.Of(8)), (bounded.Least.Value.Exact, bounded.Greatest.Value.Exact));
        Assert.Equal(Exact.Of(180), bounded.Greatest.At.Single().At.Exact);
    }

    public static TheoryData<string> Outside => [.. NoBounds.Keys];

    private static Dictionary<string, (Expr Formula, Items<BoxSide> Box)> NoBounds { get; } = new()
    {
        ["rays that may be parallel"] = (ToT, [M("c", 100, 1), D("A", 95, 1), D("B", 84.5m, 1)]),
        ["rays that are parallel at one corner"] = (ToT, [M("c", 100, 1), D("A", 95, 1), D("B", 83, 1)]),
        ["a triangle that may not close"] = (ArcCos((Square(Sides.B) + Square(Sides.C) - Square(Sides.A)) / (2 * Sides.B * Sides.C)), [M("a", 10, 0.5m), M("b", 4, 0.5m), M("c", 7, 0.5m)]),
        ["an arc that may not reach"] = (Root(Square(Sides.A) - Square(Sides.B)), [M("a", 10, 0.5m), M("b", 10, 0.5m)]),
        ["a tangent of about 90"] = (Sides.A * Tan(Angles.A), [M("a", 10, 0.5m), D("A", 89.5m, 1)]),
        ["a difference that may be nothing"] = (Sides.C / (Sides.A - Sides.B), [M("a", 10, 0.5m), M("b", 9.5m, 0.5m), M("c", 7, 0.5m)]),
    };

    [Theory]
    [MemberData(nameof(Outside))]
    public void A_box_that_leaves_the_domain_has_no_bounds(string name) =>
        Assert.IsType<OutsideDomain>(Extremes.Of(NoBounds[name].Formula, NoBounds[name].Box));

    [Fact]
    public void A_comparison_is_decided_over_the_whole_box()
    {
        Items<BoxSide> box = [D("A", 38, 1), M("b", 27, 1), M("a", 20, 0.5m)];
        Assert.Equal(1, Extremes.Sign(Sides.A - Sides.B * Sin(Angles.A), box));
        Assert.Equal(-1, Extremes.Sign(Sides.A - Sides.B, box));
        Assert.Null(Extremes.Sign(Sides.A - Sides.B * Make.Number("0.74"), box));
        Assert.Null(Extremes.Sign(1 / (Sides.A - Sides.B * Make.Number("0.74")) * Make.M("1"), box));
        Assert.Equal(1, Extremes.Sign(Sides.A * Sides.B - Square(Sides.B) / 2, [M("a", 10, 2), M("b", 12, 3)]));
    }

    [Fact]
    public void A_symbol_without_a_side_is_a_fault_of_the_caller() =>
        Assert.Throws<ArgumentException>(() => Extremes.Of(Area, [M("a", 1, 0.1m), M("b", 1, 0.1m)]));

    [Fact]
    public void Drawn_boxes_hold_all_values_of_a_grid_and_reach_them()
    {
        (string Name, Expr Formula)[] formulas =
        [
            ("area", Area), ("to T", ToT), ("height", Sides.C / (1 / Tan(Angles.A) + 1 / Tan(Angles.B))),
            ("third side", Root(Square(Sides.A) + Square(Sides.B) - 2 * Sides.A * Sides.B * Cos(Angles.C))),
            ("seen", ArcTan(Sides.A / Sides.C) - ArcTan(Sides.B / Sides.C)),
            ("inscribed", 2 * Square(Sides.C) * Sin(Angles.A) * Sin(Angles.B) * Sin(Angles.A + Angles.B)),
            ("rectangle", Sides.A * (Sides.C - Sides.A) / 2 + Square(Sides.B)),
        ];
        Random random = new(99);
        for (int i = 0; i < Boxes; i++)
        {
            (string name, Expr formula) = formulas[i % formulas.Length];
            Items<BoxSide> box = [.. formula.Symbols().Select(s => Drawn(((Letter)s).Name, random))];
            Bounded bounded = Assert.IsType<Bounded>(Extremes.Of(formula, box));
            double[] grid = [.. Grid(box, 6).Select(p => Rough.Of(formula, p))];
            (double low, double high, double span) = (bounded.Least.Value.Number, bounded.Greatest.Value.Number, grid.Max() - grid.Min());
            string drawn = $"{name} {string.Join(' ', box)}";
            Assert.True(low <= grid.Min() + 1e-9 && high >= grid.Max() - 1e-9, drawn);
            Assert.True(low >= grid.Min() - 0.05 * span && high <= grid.Max() + 0.05 * span, drawn);
            Assert.Equal(low, Rough.Of(formula, bounded.Least.At.ToDictionary(l => l.Of, l => l.At.Number)), 9);
            Assert.Equal(high, Rough.Of(formula, bounded.Greatest.At.ToDictionary(l => l.Of, l => l.At.Number)), 9);
        }
    }

    private static BoxSide Drawn(string letter, Random random) => char.IsUpper(letter[0])
        ? D(letter, random.Next(250, 800) / 10m, random.Next(1, 60) / 10m)
        : M(letter, random.Next(50, 200) / 10m, random.Next(1, 20) / 10m);

    private static IEnumerable<Dictionary<Symbol, double>> Grid(Items<BoxSide> box, int steps) => box.Aggregate(
        (IEnumerable<Dictionary<Symbol, double>>)[[]],
        (all, side) => all.SelectMany(p => Enumerable.Range(0, steps + 1).Select(k => new Dictionary<Symbol, double>(p) { [side.Of] = side.Low.ToDouble() + k * side.Width.ToDouble() / steps })));

    private static Bounded Of(Expr formula, params BoxSide[] box) => Assert.IsType<Bounded>(Extremes.Of(formula, [.. box]));

    private static BoxSide Exactly(string letter, int value, Unit? unit = null) => new(new Letter(letter), value, value, unit ?? Unit.Metre);
}
