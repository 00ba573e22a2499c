namespace Explain;

/// <summary>Goes through an explained method for certain arguments. Every tree is evaluated from the arguments, so nothing is rounded on the way.</summary>
internal sealed class ExplainedWorking(ExplainedFormula formula, Items<Expr> arguments)
{
    private readonly Dictionary<Symbol, Expr> known = formula.Parameters.Zip(arguments).ToDictionary(p => (Symbol)p.First.Symbol, p => p.Second);
    private readonly List<ExplainedStep> steps = [];

    public Items<ExplainedStep> Run()
    {
        Take(formula.Lines);
        return [.. steps];
    }

    /// <summary>Takes lines up to the result; true when it was reached.</summary>
    private bool Take(Items<ExplainedLine> lines) => lines.Any(Take);

    private bool Take(ExplainedLine line)
    {
        switch (line.Put(known))
        {
            case ExplainedRequirement put:
                if (!Holds(put.Holds)) throw new ArgumentException(formula.Name, nameof(arguments));
                steps.Add(new(line, null, null, []));
                return false;
            case ExplainedBranch put:
                steps.Add(new(line, null, null, []));
                return Take(Holds(put.If) ? ((ExplainedBranch)line).Then : ((ExplainedBranch)line).Otherwise);
            case ExplainedCall put:
                Items<ExplainedStep> inner = put.Formula.Work(put.Arguments);
                return Add(line, put.Symbol, inner[^1].Closed!, put.Formula.Unit, inner);
            case ExplainedValue put:
                return Add(line, put.Symbol, put.Is, put.Unit, []);
            case ExplainedResult put:
                return !Add(line, put.Symbol, put.Is, put.Unit, []);
            default:
                throw new ArgumentException(line.GetType().Name, nameof(line));
        }
    }

    /// <summary>Adds a step with its value; always false, as the method goes on.</summary>
    private bool Add(ExplainedLine line, Symbol symbol, Expr closed, Unit unit, Items<ExplainedStep> inner)
    {
        Value value = Evaluator.Evaluate(closed) switch
        {
            Evaluated found => found.Value.In(unit),
            Undecided => throw new UndecidedException(),
            _ => throw new ArgumentException(formula.Name, nameof(arguments)),
        };
        steps.Add(new(line, closed, value, inner));
        known[symbol] = closed;
        return false;
    }

    private static bool Holds(Items<ExplainedCondition> conditions) => conditions.All(c => (c.Relation, Sign(c)) switch
    {
        (Relation.Equal, 0) or (Relation.Less, < 0) or (Relation.Greater, > 0) or (Relation.LessOrEqual, <= 0) or (Relation.GreaterOrEqual, >= 0) => true,
        (Relation.Different, var sign) => sign != 0,
        _ => false,
    });

    private static int Sign(ExplainedCondition condition) => Evaluator.Compare(condition.Left, condition.Right) ?? throw new UndecidedException();
}
