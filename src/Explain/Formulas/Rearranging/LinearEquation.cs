using Fractions;

namespace Explain;

/// <summary>Solves an equation with rational coefficients for a letter, line by line: collect, bring the letter to one side, then the rest to the other, divide.</summary>
internal sealed class LinearEquation
{
    private readonly List<EquationLine> lines;
    private readonly Expr letter;
    private Affine left;
    private Affine right;

    private LinearEquation(Equation start, Affine left, Affine right, Expr letter)
    {
        (this.left, this.right, this.letter) = (left, right, letter);
        lines = [new(start, new(MoveKind.Start))];
    }

    /// <summary>Null when the equation is not linear, when the letter falls out, or a coefficient has a unit that the rest has not.</summary>
    public static Isolation? Solve(Equation equation, Symbol letter)
    {
        if (Affine.Of(equation.Left) is not { } left || Affine.Of(equation.Right) is not { } right) return null;
        Unit unit = left.Plus(right.Times(-1)).CommonUnit;
        LinearEquation solving = new(equation, left.Without(unit), right.Without(unit), new SymbolUse(letter));
        return solving.Solve();
    }

    private Isolation? Solve()
    {
        Write(OnlyUnitsGo ? MoveKind.LeaveOutUnit : MoveKind.Collect, null);
        Fraction here = left.Coefficient(letter), there = right.Coefficient(letter);
        if (here == there) return null;
        if (here < there || here.IsZero)
        {
            (left, right, here, there) = (right, left, there, here);
            Write(MoveKind.Exchange, null);
        }

        Take(right.Where(letter.Equals));
        Take(left.Where(t => !t.Equals(letter)));
        DivideBy(left.Coefficient(letter));
        return left.Write().Equals(letter) ? new(right.Write(), ItemsFactory.From(lines), SecondValue.None, null) : null;
    }

    /// <summary>Whether the first equation has its terms collected already.</summary>
    private bool OnlyUnitsGo => new Equation(WithoutUnits(lines[0].Says.Left), WithoutUnits(lines[0].Says.Right)) == new Equation(left.Write(), right.Write());

    private static Expr WithoutUnits(Expr side) => side.Substitute(e => e switch
    {
        Product { Left: var number, Right: Quantity { Unit.Power: > 0, Amount: var one } } when one == Exact.One => number,
        Quantity { Unit.Power: > 0, Amount: var amount } => new Quantity(amount, Unit.None),
        _ => null,
    });

    private void Take(Affine terms)
    {
        if (terms.IsZero) return;
        bool add = terms.Write() is Negative;
        (left, right) = (left.Plus(terms.Times(-1)), right.Plus(terms.Times(-1)));
        Write(add ? MoveKind.Add : MoveKind.Subtract, terms.Times(add ? -1 : 1).Write());
    }

    private void DivideBy(Fraction coefficient)
    {
        if (coefficient == Fraction.One) return;
        Fraction inverse = coefficient.Reciprocal().Reduce();
        (left, right) = (left.Times(inverse), right.Times(inverse));
        bool multiply = inverse.Denominator.IsOne;
        Write(multiply ? MoveKind.Multiply : MoveKind.Divide, new Quantity(Exact.Of(multiply ? inverse : coefficient), Unit.None));
    }

    private void Write(MoveKind kind, Expr? with)
    {
        Equation says = new(left.Write(), right.Write());
        if (says != lines[^1].Says) lines.Add(new(says, new(kind, with)));
    }
}
