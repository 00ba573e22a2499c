namespace Explain;

/// <summary>An explained method as data: its symbols, its lines as trees, and their reasons. The generator writes it.</summary>
/// <param name="Name">The method's name.</param>
/// <param name="Title">The method's own summary; empty when it has none.</param>
/// <param name="Parameters">What is put in.</param>
/// <param name="Result">The symbol of the result.</param>
/// <param name="Unit">The unit of the result.</param>
/// <param name="Lines">The lines, in the order of the method.</param>
public sealed record ExplainedFormula(string Name, string Title, Items<ExplainedParameter> Parameters, Letter Result, Unit Unit, Items<ExplainedLine> Lines)
{
    /// <summary>The lines with other formulas in place of the parameters, such as the quantities of a figure.</summary>
    /// <param name="arguments">One for each parameter, in order.</param>
    /// <exception cref="ArgumentException">There are more or fewer.</exception>
    public Items<ExplainedLine> For(Items<Expr> arguments)
    {
        Dictionary<Symbol, Expr> by = Parameters.Zip(Checked(arguments)).ToDictionary(p => (Symbol)p.First.Symbol, p => p.Second);
        return [.. Lines.Select(l => l.Put(by))];
    }

    /// <summary>The lines used for given arguments, each with its value. Conditions are decided, not compared in doubles.</summary>
    /// <param name="arguments">One closed formula for each parameter, in order.</param>
    /// <exception cref="ArgumentException">There are more or fewer arguments, or a requirement does not hold.</exception>
    /// <exception cref="UndecidedException">A condition could not be decided.</exception>
    public Items<ExplainedStep> Work(Items<Expr> arguments) => new ExplainedWorking(this, Checked(arguments)).Run();

    private Items<Expr> Checked(Items<Expr> arguments) =>
        arguments.Count == Parameters.Count ? arguments : throw new ArgumentException(Name, nameof(arguments));
}
