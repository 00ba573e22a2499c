namespace Explain;

/// <summary>An equation on its way to a new subject: its two sides, and the lines so far.</summary>
internal sealed class Workings
{
    private readonly List<EquationLine> lines = [];
    private SecondValue second;

    public Workings(Equation start, Expr target)
    {
        (Left, Right, Target) = (start.Left, start.Right, target);
        Write(MoveKind.Start, null);
    }

    public Expr Target { get; }

    public Expr Left { get; private set; }

    public Expr Right { get; private set; }

    /// <summary>What the right side is for the second value.</summary>
    public Expr? Other { get; private set; }

    public bool IsSingle => Left.Count(Target) + Right.Count(Target) == 1;

    public bool IsDone => Left.Equals(Target) && !Right.Holds(Target);

    public Isolation Result => new(Right, ItemsFactory.From(lines), second, Other);

    /// <summary>Does the same to both sides.</summary>
    public void Move(MoveKind kind, Expr? with, Expr left, Func<Expr, Expr> right)
    {
        (Left, Right, Other) = (left, right(Right), Other is null ? null : right(Other));
        Write(kind, with);
    }

    public void Exchange()
    {
        (Left, Right) = (Right, Left);
        Write(MoveKind.Exchange, null);
    }

    /// <summary>A move that gives up a second value; false when one was given up before.</summary>
    public bool Move(MoveKind kind, Expr left, Expr right, SecondValue lost, Expr other)
    {
        if (second != SecondValue.None) return false;
        (Left, Right, Other, second) = (left, right, other, lost);
        Write(kind, null);
        return true;
    }

    private void Write(MoveKind kind, Expr? with) => lines.Add(new(new(Left, Right), new(kind, with)));
}
