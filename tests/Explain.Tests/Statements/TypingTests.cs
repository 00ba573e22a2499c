using CsCheck;

namespace Explain.Tests;

/// <summary>Every way of typing a statement, a quantity or a value.</summary>
public sealed class TypingTests
{
    [Theory]
    [InlineData("PQ ∥ RS", "PQ parallel to RS", "PQ is parallel to RS", "PQ || RS", "The line PQ is parallel to RS")]
    [InlineData("AB ⊥ BD", "AB perpendicular to BD", "AB is perpendicular to BD", "AB is at right angles to BD")]
    [InlineData("B, C, D are in line", "B, C and D are in line", "B, C, and D are collinear", "B,C,D are on a straight line")]
    [InlineData("angle BAD = angle DAC", "∠BAD = ∠DAC", "∠BAD ≅ ∠DAC", "m∠BAD = m∠DAC", "angle DAB = angle CAD", "Angle BAD=angle DAC")]
    [InlineData("AB = CD", "BA = DC", "segment AB ≅ segment CD", "AB=CD", "side AB = side CD")]
    [InlineData("angle ABC = 52°", "m∠ABC = 52°", "m∠ABC = 52", "∠ABC = 52 deg", "angle CBA = 52 degrees")]
    [InlineData("triangles ABC and DEF are congruent", "△ABC ≅ △DEF", "triangle ABC is congruent to triangle DEF")]
    [InlineData("triangles ABC and DEF are similar", "△ABC ∼ △DEF", "△ABC ~ △DEF", "triangle ABC is similar to triangle DEF")]
    [InlineData("ABCD is a trapezium", "ABCD is a trapezoid")]
    [InlineData("D is on AB produced", "D is on AB extended")]
    [InlineData("ABC goes anticlockwise", "ABC goes counterclockwise")]
    [InlineData("A, B, C, D are on a circle, centre O", "A, B, C and D are on a circle, center O", "A, B, C, D lie on the circle with centre O")]
    [InlineData("ABC is a triangle, right-angled at B", "triangle ABC is right-angled at B", "ABC is a right triangle with the right angle at B", "ABC is a right-angled triangle, right-angled at B")]
    [InlineData("ABC is a triangle, isosceles with BA = BC", "ABC is an isosceles triangle with BA = BC", "triangle ABC is isosceles with BA = BC")]
    [InlineData("ABCDEFGHIJK is a regular 11-gon", "A…K is a regular 11-gon", "A...K is a regular hendecagon")]
    [InlineData("ABCDEF is a polygon, reflex at D", "A…F is a polygon, reflex at D")]
    [InlineData("B₁C′ = 3 cm", "B1C' = 3 cm")]
    [InlineData("F is the foot of the perpendicular from T to PQ", "F is the foot of the perpendicular from T to the line PQ", "F is foot of perpendicular from T to PQ")]
    [InlineData("AB and CD meet at E", "AB and CD cross at E")]
    [InlineData("the lines AB and CD meet at E", "lines AB and CD intersect at E")]
    [InlineData("tether at A, outside ABCD", "tether at A outside ABCD")]
    [InlineData("BC ÷ sin BAC = CA ÷ sin ABC", "BC / sin ∠BAC = CA / sin ∠ABC", "BC ÷ sin angle BAC = CA ÷ sin angle ABC")]
    [InlineData("AB² = BC² + CA² − 2 × BC × CA × cos BCA", "AB^2 = BC^2 + CA^2 - 2 * BC * CA * cos BCA", "AB² = BC² + CA² − 2BC · CA · cos ∠BCA")]
    [InlineData("distance from T to PQ = 137 m", "the distance from T to PQ = 137 m", "the shortest distance from T to the line PQ = 137 m")]
    public void Different_ways_of_typing_are_one_statement(string first, params string[] others)
    {
        Statement expected = Assert.IsAssignableFrom<Statement>(StatementGrammar.Read(first));
        foreach (string other in others) Assert.True(expected.Equals(StatementGrammar.Read(other)), other);
    }

    [Theory]
    [InlineData("9.5 cm", "9.50 cm", "9.5cm", " 9.5 cm ", "9.5 centimetres", "9.5 centimeters")]
    [InlineData("75°", "75 deg", "75 degrees", "75deg", "075°", "75º")]
    [InlineData("24 cm²", "24 cm^2", "24 cm2", "24 square centimetres", "24 sq cm", "24 square centimeters")]
    [InlineData("√2 cm", "sqrt(2) cm", "√(2) cm", "sqrt 2 cm")]
    [InlineData("31.5(√2 + 1) cm", "63(√2 + 1)/2 cm", "31.5 × (1 + √2) cm", "(31.5sqrt(2) + 31.5) cm")]
    [InlineData("68π m²", "68pi m^2", "68 π m2", "68*π m²")]
    [InlineData("0.75 m", "3/4 m", "3 / 4 m")]
    [InlineData("1.5 in", "1½ in", "1 ½ in", "1 1/2 in", "3/2 in", "1 1/2 inches")]
    [InlineData("63.5 in", "5 ft 3 1/2 in", "5 ft 3.5 in", "5 ft 3½ in", "1 yd 2 ft 3 1/2 in")]
    [InlineData("62.75°", "62° 45'", "62 3/4°", "62° 44' 60\"")]
    [InlineData("63 in", "5 ft 3 in", "5ft 3in", "5 feet 3 inches")]
    [InlineData("62.5°", "62° 30'", "62° 30′", "62°30′", "62 deg 30'", "62° 29′ 60″")]
    [InlineData("−3 cm", "-3 cm", "–3 cm")]
    [InlineData("√(41 − 20√2) cm", "sqrt(41 - 20sqrt(2)) cm")]
    [InlineData("120 m ± 0.5 m", "120 m +/- 0.5 m", "120 ± 0.5 m", "120 m +/- 1/2 m", "120 m +- 0.5 m", "(120 ± 0.5) m", "120 metres ± 0.5 metres")]
    [InlineData("(2x + 16)°", "(2x + 16) deg", "(2 * x + 16)°")]
    public void Different_ways_of_typing_are_one_value(string first, params string[] others)
    {
        Assert.True(ValueReader.TryRead(first, out GivenValue? expected, out _));
        foreach (string other in others)
        {
            Assert.True(ValueReader.TryRead(other, out GivenValue? read, out _), other);
            Assert.Equal((expected.Is, expected.Within), (read.Is, read.Within));
        }
    }

    [Theory]
    [InlineData("F is foot of perpendiclar from T to PQ", "F is the foot of the perpendicular from T to PQ")]
    [InlineData("PQR is a triangel", "PQR is a triangle")]
    [InlineData("M is midpint of AB", "M is the midpoint of AB")]
    [InlineData("lines AB, CD meet in E", "AB and CD meet at E")]
    [InlineData("BA equals BC", "BA = BC")]
    [InlineData("WXYZ is a parallellogram", "WXYZ is a parallelogram")]
    [InlineData("T is outside ABC", "T is inside ABC")]
    public void What_cannot_be_read_is_told_the_nearest_statement(string typed, string nearest)
    {
        Assert.False(StatementGrammar.TryRead(typed, out _, out Fault? fault));
        Assert.Equal(ErrorCodes.UnreadableStatement, fault.Code);
        Assert.Equal(nearest, ((TextArg)fault.Remedy!.Args.Single()).Is);
    }

    [Theory]
    [InlineData("ABCD is a regular octagon")]
    [InlineData("ABC is a triangle, right-angled at D")]
    [InlineData("ABA is a triangle")]
    [InlineData("AA = 3 cm")]
    [InlineData("triangle ABC is similar to DEFG")]
    [InlineData("A, B are in line")]
    [InlineData("AB =")]
    [InlineData("= AB")]
    [InlineData("AB = 3 cm,")]
    [InlineData("ABC = 50°")]
    [InlineData("AB ≅ 3 cm")]
    [InlineData("")]
    public void What_makes_no_sense_is_no_statement(string text) => Assert.Null(StatementGrammar.Read(text));

    [Theory]
    [InlineData("9,5 cm", ErrorCodes.UnreadableNumber)]
    [InlineData("12,500 m", ErrorCodes.UnreadableNumber)]
    [InlineData("1O cm", ErrorCodes.UnreadableNumber)]
    [InlineData("l2 cm", ErrorCodes.UnreadableNumber)]
    [InlineData("1/0 m", ErrorCodes.UnreadableNumber)]
    [InlineData("√(1 − 2) m", ErrorCodes.UnreadableNumber)]
    [InlineData("(1 + (2) m", ErrorCodes.UnreadableNumber)]
    [InlineData("AB", ErrorCodes.UnreadableNumber)]
    [InlineData("", ErrorCodes.UnreadableNumber)]
    [InlineData("1e400 m", ErrorCodes.TooLarge)]
    [InlineData("9.5 cn", ErrorCodes.UnknownUnit)]
    [InlineData("3 parsecs", ErrorCodes.UnknownUnit)]
    public void What_is_no_value_has_its_code(string text, string code)
    {
        Assert.False(ValueReader.TryRead(text, out _, out Fault? fault));
        Assert.Equal(code, fault.Code);
    }

    [Fact]
    public void Any_text_is_read_or_refused_and_nothing_throws()
    {
        string[] scraps = ["A", "AB", "ABC", "A…K", "B₁", " ", " ", "is", "a", "the", "triangle", "angle", "∠", "m∠", "on", ",", "and", "=", "≅", "(", ")", "√", "π", "^", "9", "²", "2", "3/4", "1e99", "°", "cm", "ft", "in",
            "±", "x", "sin", "⁻¹", "÷", "/", "×", "−", "+", "…", "distance from", "to", "parallel", "circle", "centre", "\"", "'", "\u0000", "é", "reflex", "tether at", "0", "12 500", "."];
        Gen.Int[0, scraps.Length - 1].Array[0, 30].Select(i => string.Concat(i.Select(n => scraps[n]))).Sample(
            text =>
            {
                if (!StatementGrammar.TryRead(text, out Statement? statement, out Fault? fault)) return fault.Code == ErrorCodes.UnreadableStatement && (ValueReader.TryRead(text, out _, out fault) || fault.Code.Length > 0);
                return statement.Equals(StatementGrammar.Read(text));
            },
            iter: Effort.Of(5_000, 50_000));
    }

    [Fact]
    public void Long_and_deep_texts_are_refused_at_once()
    {
        foreach (string text in (string[])["AB = " + new string('(', 10_000) + "1", "AB = " + string.Concat(Enumerable.Repeat("√", 5000)) + "2", "AB = " + string.Concat(Enumerable.Repeat("(9^9)", 60)) + "^9 m", new string('A', 10_000), string.Join(" + ", Enumerable.Repeat("1", 5000))])
        {
            Assert.False(StatementGrammar.TryRead(text, out _, out _) && text.Length > 1000);
            ValueReader.TryRead(text, out _, out _);
        }
    }
}
