namespace Explain.Tests.Formulas;

/// <summary>Calculates an explained formula in doubles, operation by operation as its trees stand: an independent reading of them.</summary>
internal sealed class PlainDoubles(ExplainedFormula formula, params double[] arguments)
{
    private readonly Dictionary<Symbol, double> known = formula.Parameters.Zip(arguments).ToDictionary(p => (Symbol)p.First.Symbol, p => p.Second);
    private double? result;

    public double Run()
    {
        Take(formula.Lines);
        return result!.Value;
    }

    private void Take(Items<ExplainedLine> lines)
    {
        foreach (ExplainedLine line in lines)
        {
            if (result is not null) return;
            switch (line)
            {
                case ExplainedValue value: known[value.Symbol] = Of(value.Is); break;
                case ExplainedCall call: known[call.Symbol] = new PlainDoubles(call.Formula, [.. call.Arguments.Select(Of)]).Run(); break;
                case ExplainedBranch branch: Take(branch.If.All(Holds) ? branch.Then : branch.Otherwise); break;
                case ExplainedResult last: result = Of(last.Is); break;
            }
        }
    }

    private bool Holds(ExplainedCondition condition) => condition.Relation switch
    {
        Relation.Equal => Of(condition.Left) == Of(condition.Right),
        Relation.Greater => Of(condition.Left) > Of(condition.Right),
        _ => throw new NotSupportedException(),
    };

    private double Of(Expr expr) => expr switch
    {
        Quantity q => q.Amount == Exact.Pi ? Math.PI : (double)q.Amount.Rational!.Value.Numerator / (double)q.Amount.Rational!.Value.Denominator,
        SymbolUse use => known[use.Symbol],
        Sum s => Of(s.Left) + Of(s.Right),
        Difference d => Of(d.Left) - Of(d.Right),
        Product p => Of(p.Left) * Of(p.Right),
        Quotient q => Of(q.Left) / Of(q.Right),
        Power p => Math.Pow(Of(p.Base), p.Exponent),
        Root r => Math.Sqrt(Of(r.Of)),
        Apply { Function: Function.Tangent } a => DegreeTrigonometry.Tan(Of(a.To)),
        Apply { Function: Function.Cosine } a => DegreeTrigonometry.Cos(Of(a.To)),
        Apply { Function: Function.ArcCosine } a => DegreeTrigonometry.Acos(Of(a.To)),
        _ => throw new NotSupportedException(expr.ToString()),
    };
}
