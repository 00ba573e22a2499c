namespace Explain;

/// <summary>A parameter of an explained method.</summary>
/// <param name="Name">Its name in the method.</param>
/// <param name="Symbol">The symbol under which it is printed.</param>
/// <param name="Unit">Its unit, which fixes its kind; any unit of that kind may be put in.</param>
public sealed record ExplainedParameter(string Name, Letter Symbol, Unit Unit)
{
    /// <summary>A double as a quantity of this parameter: the shortest decimal that names it.</summary>
    public Quantity Of(double number) => new(Exact.Of(ShortestDecimal.Of(number)), Unit);
}
