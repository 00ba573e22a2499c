using Fractions;
namespace Explain.Tests.Numbers;
public sealed class SmokeTests
{
    [Fact]
    public void Shows()
    {
        var s = new System.Text.StringBuilder();
        foreach (int d in new[]{0,30,45,47,62,71,90,120,200}) s.AppendLine($"{d} {Trigonometry.Sin(d,192).Nearest()} {Trigonometry.Cos(d,192).Nearest()} {Math.Sin(d*Math.PI/180)} {SpecialAngles.Sin(d)} {SpecialAngles.Tan(d)}");
        s.AppendLine(Trigonometry.Pi(192).Nearest().ToString("R"));
        var x = Enclosure.Of(new Fraction(3,5),192);
        s.AppendLine($"{Trigonometry.ArcSin(x)!.Value.Nearest():R} {Math.Asin(0.6)*180/Math.PI:R} {Trigonometry.ArcTan(x).Nearest():R} {Math.Atan(0.6)*180/Math.PI:R}");
        s.AppendLine(Exact.Divide(Exact.One, Exact.Subtract(Exact.Root(Exact.Of(2))!, Exact.One)!)!.ToString());
        s.AppendLine(Exact.Root(Exact.Subtract(Exact.Of(41), Exact.Multiply(Exact.Of(20), Exact.Root(Exact.Of(2))!)!)!)!.ToString());
        s.AppendLine(Exact.Root(Exact.Add(Exact.Of(3), Exact.Multiply(Exact.Of(2), Exact.Root(Exact.Of(2))!)!)!)!.ToString());
        s.AppendLine(ExactText.Write(Exact.Multiply(Exact.Of(new Fraction(63,2)), Exact.Add(Exact.Root(Exact.Of(2))!, Exact.One)!)!, true));
        s.AppendLine(ExactText.Write(Exact.Add(Exact.Multiply(Exact.Of(17), Exact.Pi)!, Exact.Of(18))!, true));
        var v = new Value(null, Trigonometry.Sin(71,192), Unit.None);
        s.AppendLine(NumberText.Cut(v, NumberStyle.For(Unit.None)).ToString());
        s.AppendLine(NumberText.Rounded(v, Rounding.Default(Unit.Metre)).ToString());
        s.AppendLine(NumberText.UpperBound(v, Rounding.Default(Unit.Metre)).ToString());
        s.AppendLine(NumberText.Rounded(Value.Of(Exact.Of(Fraction.FromString("9.996")), Unit.Metre), Rounding.Default(Unit.Metre)).ToString());
        s.AppendLine(NumberText.Rounded(Value.Of(Exact.Of(Fraction.FromString("12345")), Unit.Metre), Rounding.Default(Unit.Metre)).ToString());
        Assert.Fail(s.ToString());
    }
}
