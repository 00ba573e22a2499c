using Fractions;
using static Explain.Tests.Formulas.Make;

namespace Explain.Tests.Formulas;

/// <summary>Each relation is solved for each of its quantities; the formula, put back, satisfies every line, exactly, for drawn values.</summary>
public sealed class IsolateTests
{
    private static readonly int Draws = Effort.Of(20, 200);

    private static readonly (Expr A, Expr B, Expr C) Angles = (Letter("A"), Letter("B"), Letter("C"));
    private static readonly (Expr A, Expr B, Expr C) Sides = (Letter("a"), Letter("b"), Letter("c"));

    private static Dictionary<string, (Equation Equation, string NotFor)> Relations { get; } = new()
    {
        ["sine rule"] = (new(Sides.A / Sin(Angles.A), Sides.B / Sin(Angles.B)), ""),
        ["sine rule, sines above"] = (new(Sin(Angles.A) / Sides.A, Sin(Angles.B) / Sides.B), ""),
        ["cosine rule"] = (new(Square(Sides.A), Square(Sides.B) + Square(Sides.C) - 2 * Sides.B * Sides.C * Cos(Angles.A)), "bc"),
        ["cosine rule for the angle"] = (new(Cos(Angles.A), (Square(Sides.B) + Square(Sides.C) - Square(Sides.A)) / (2 * Sides.B * Sides.C)), "bc"),
        ["sum of angles"] = (new(Angles.A + Angles.B + Angles.C, Deg("180")), ""),
        ["exterior angle"] = (new(Angles.A, Angles.B + Angles.C), ""),
        ["base angles"] = (new(Deg("180") - 2 * Angles.A, Angles.B), ""),
        ["half angle"] = (new(Angles.A - Angles.B / 2, Deg("90") - Angles.C), ""),
        ["Pythagoras"] = (new(Square(Sides.C), Square(Sides.A) + Square(Sides.B)), ""),
        ["sine"] = (new(Sin(Angles.A), Sides.A / Sides.C), ""),
        ["cosine"] = (new(Cos(Angles.A), Sides.B / Sides.C), ""),
        ["tangent"] = (new(Tan(Angles.A), Sides.A / Sides.B), ""),
        ["area"] = (new(Letter("k"), Number(new Fraction(1, 2)) * Sides.A * Sides.B * Sin(Angles.C)), ""),
        ["area over two"] = (new(Letter("k"), Sides.A * Sides.B * Sin(Angles.C) / 2), ""),
        ["trapezium"] = (new(Letter("k"), (Sides.A + Sides.B) / 2 * Sides.C), ""),
        ["circle"] = (new(Letter("k"), Pi * Square(Sides.A)), ""),
        ["height over a baseline"] = (new(Sides.A / Tan(Angles.A) + Sides.A / Tan(Angles.B), Sides.C), ""),
        ["height over a baseline, one factor"] = (new(Sides.C, Sides.A * (1 / Tan(Angles.A) + 1 / Tan(Angles.B))), ""),
        ["two stations"] = (new(Sides.A / Tan(Angles.A), Sides.A / Tan(Angles.B) + Sides.C), ""),
        ["proportion"] = (new(Sides.A / Sides.B, Sides.C / Letter("k")), ""),
        ["proportion of a part"] = (new(Sides.A / Sides.B, Letter("x") / (Letter("x") + Letter("k"))), ""),
        ["segments of chords"] = (new(Sides.A * Sides.B, Sides.C * Letter("k")), ""),
        ["tangent and secant"] = (new(Square(Letter("t")), Sides.A * (Sides.A + Sides.B)), "a"),
        ["circumradius"] = (new(Sides.A, 2 * Letter("r") * Sin(Angles.A)), ""),
        ["bearing"] = (new(Angles.A, Deg("180") - (Angles.B - Angles.C)), ""),
        ["root"] = (new(Sides.C, Root(Square(Sides.A) + Square(Sides.B))), ""),
        ["a side from both sides"] = (new(2 * Sides.A + Sides.B, 5 * Sides.A - 3 * Sides.C), ""),
    };

    public static TheoryData<string> All => [.. Relations.Keys];

    [Theory]
    [MemberData(nameof(All))]
    public void Every_quantity_is_isolated_and_every_line_holds(string name)
    {
        (Equation equation, string notFor) = Relations[name];
        Random random = new(name.Length * 31 + name[0]);
        foreach (Symbol symbol in (equation.Left + equation.Right).Symbols())
        {
            Isolation? isolation = Isolate.For(equation, symbol);
            Assert.True(notFor.Contains(((Letter)symbol).Name) == isolation is null, $"{name} for {symbol}");
            if (isolation is null) continue;
            Assert.Equal(new Equation(new SymbolUse(symbol), isolation.Formula), isolation.Lines[^1].Says);
            Assert.Equal(new EquationLine(equation, new Move(MoveKind.Start)), isolation.Lines[0]);
            int held = Enumerable.Range(0, 4 * Draws).Count(_ => Holds(isolation, symbol, random));
            Assert.True(held >= Draws / 4, $"{name} for {symbol}: only {held} draws had a value");
        }
    }

    /// <summary>False when the drawn values give the quantity no value.</summary>
    private static bool Holds(Isolation isolation, Symbol symbol, Random random)
    {
        Dictionary<string, Expr> values = [];
        Expr formula = Drawn(isolation.Formula);
        if (Evaluator.Sign(formula) is null) return false;
        Expr angle = isolation.Second == SecondValue.Supplement ? Drawn(isolation.Other!) : formula;
        foreach (EquationLine line in isolation.Lines) Check(line.Says, formula);
        if (isolation.Second == SecondValue.Supplement) Check(isolation.Lines[0].Says, angle);
        return true;

        void Check(Equation says, Expr value)
        {
            (Expr left, Expr right) = (Drawn(says.Left.Replace(symbol, value)), Drawn(says.Right.Replace(symbol, value)));
            Assert.True(Evaluator.Compare(left, right) == 0, $"{Text.Of(says)} with {Text.Of(value)}");
        }

        Expr Drawn(Expr expr) => expr.Substitute(node => node is SymbolUse(Letter(var letter)) ? Draw(letter) : null);

        Expr Draw(string letter) => values.TryGetValue(letter, out Expr? known) ? known
            : values[letter] = char.IsUpper(letter[0]) ? Deg($"{random.Next(5, 100)}") : Number(new Fraction(random.Next(5, 100), 2));
    }
}
