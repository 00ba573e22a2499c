namespace Explain;

/// <summary>A value of an explained method, with all that is needed to show how it comes about.</summary>
/// <typeparam name="T">The method's type of result.</typeparam>
/// <param name="Value">The plain method's own result, to the last bit.</param>
/// <param name="Formula">The method as data.</param>
/// <param name="Arguments">What was put in, in the order of the parameters. A double is taken as the shortest decimal that names it: 0.1 is a tenth.</param>
public sealed record Explained<T>(T Value, ExplainedFormula Formula, Items<Quantity> Arguments)
{
    /// <summary>The lines used for these arguments, each with its value, evaluated exactly from what was put in.</summary>
    /// <exception cref="UndecidedException">A condition could not be decided.</exception>
    public Items<ExplainedStep> Steps => Formula.Work([.. Arguments]);
}
