using Fractions;
using static Explain.DegreeTrigonometry;

namespace Explain.Tests.Numbers;

public sealed class DegreeTrigonometryTests
{
    private const double Units = 3;

    [Fact]
    public void Special_values_are_exact()
    {
        Assert.Equal((0.5, 1, 0, -0.5), (Sin(30), Sin(90), Sin(180), Sin(-30)));
        Assert.Equal((0.5, 0, -1, -0.5), (Cos(60), Cos(90), Cos(180), Cos(240)));
        Assert.Equal((1, -1, 0, 1), (Tan(45), Tan(135), Tan(180), Tan(225)));
        Assert.Equal((30, -90, 60, 120), (Asin(0.5), Asin(-1), Acos(0.5), Acos(-0.5)));
        Assert.Equal((90, 180, 0, 45, -45), (Acos(0), Acos(-1), Acos(1), Atan(1), Atan(-1)));
        Assert.Equal(12, 12 * Tan(45));
        Assert.Equal(double.PositiveInfinity, Math.Abs(Tan(270)));
        Assert.True(double.IsNaN(Asin(1.5)) && double.IsNaN(Acos(-2)) && double.IsNaN(Sin(double.PositiveInfinity)));
    }

    [Fact]
    public void Every_tenth_of_a_degree_is_out_by_at_most_three_units()
    {
        foreach (int tenths in Enumerable.Range(-3600, 7201))
        {
            Fraction degrees = Fraction.FromDouble(tenths / 10.0);
            Near(Trigonometry.Sin(degrees, 192).Nearest(), Sin(tenths / 10.0));
            Near(Trigonometry.Cos(degrees, 192).Nearest(), Cos(tenths / 10.0));
            if (Trigonometry.Tan(degrees, 192) is { } tangent) Near(tangent.Nearest(), Tan(tenths / 10.0));
        }
    }

    [Fact]
    public void Every_hundredth_of_an_inverse_is_out_by_at_most_three_units()
    {
        foreach (int hundredths in Enumerable.Range(-100, 201))
        {
            Enclosure value = Enclosure.Of(Fraction.FromDouble(hundredths / 100.0), 192);
            Near(Trigonometry.ArcSin(value)!.Value.Nearest(), Asin(hundredths / 100.0));
            Near(Trigonometry.ArcCos(value)!.Value.Nearest(), Acos(hundredths / 100.0));
            Near(Trigonometry.ArcTan(value * new Fraction(10)).Nearest(), Atan(Fraction.FromDouble(hundredths / 100.0).ToDouble() * 10));
        }
    }

    private static void Near(double expected, double actual) =>
        Assert.InRange(actual, expected - Units * Math.ScaleB(Math.Abs(expected), -52), expected + Units * Math.ScaleB(Math.Abs(expected), -52));
}
