namespace Explain;

/// <summary>Measurements in one letter: the step that finds the letter, and those that put it in.</summary>
internal sealed class Letters
{
    private readonly Problem problem;
    private readonly Algebra? found;

    public Letters(RuleBook book, Topic topic, Ledger ledger, Problem problem)
    {
        (this.problem, Numbered) = (problem, problem);
        Given[] lettered = [.. problem.Given.Where(g => g.Value.Symbols().Any())];
        if (lettered.SelectMany(g => g.Value.Symbols()).Distinct().ToArray() is not [Letter letter]) return;
        found = new LetterEquation(book, topic.Working, ledger).Solve(letter);
        if (found is null) return;
        Expr value = ((Compare)found.Says).Terms[1];
        ledger.Learn(letter, found.Id, value);
        Numbered = problem.Put(new Dictionary<Symbol, Expr> { [letter] = value });
        Steps = [found, .. lettered.Select(g => PutIn(ledger, g, letter))];
    }

    /// <summary>The problem in numbers.</summary>
    public Problem Numbered { get; }

    public Items<Step> Steps { get; }

    /// <summary>Why no figure has such measurements, or why they cannot be found; null when nothing is wrong.</summary>
    public ProblemError? Fault()
    {
        if (problem.Given.FirstOrDefault(g => g.Value.Symbols().Any()) is not { } lettered) return null;
        if (found is null) return Refusals.NotInLetters(lettered);
        Given[] impossible = [.. Numbered.Given.Where(g => g.Value is Quantity value && (value.Amount.Sign <= 0 || g.Of is Angle && Evaluator.Compare(value, Expr.Degrees(180)) >= 0))];
        if (impossible.Length == 0) return null;
        string code = impossible.Any(g => g.Of is Angle) ? ErrorCodes.ImpossibleAngle : ErrorCodes.NotPositive;
        Items<int> lines = Culprits.LinesOf(problem.Given.Where(g => g.Value.Symbols().Any()).Select(g => g.At));
        return new(code, lines, 0, ErrorPhrases.LettersGiveNoFigure(found.Start, found.Says, [.. impossible.Select(Culprits.Fact)]), ErrorPhrases.CheckTheExpressions());
    }

    /// <summary>The steps without those that put the letter in where no other step of the working, and no answer, uses the value.</summary>
    public static Items<Step> Used(Items<Step> steps, IEnumerable<Step> working, IReadOnlyCollection<ClaimId> answers)
    {
        HashSet<ClaimId> used = [.. answers, .. working.SelectMany(Solution.Within).SelectMany(s => s.Why.From)];
        return [.. steps.Where(s => !PutsIn(s) || used.Contains(s.Id))];
    }

    /// <summary>Checks, each after the steps that put the letter in for it alone.</summary>
    public IEnumerable<Passage> WithPutIn(IEnumerable<Passage> checks, IEnumerable<Step> working, IReadOnlyCollection<ClaimId> answers)
    {
        HashSet<ClaimId> there = [.. Used(Steps, working, answers).Select(s => s.Id)];
        foreach (Passage check in checks)
        {
            Items<Step> own = [.. Used(Steps, check.Steps, []).Where(s => there.Add(s.Id))];
            yield return check with { Steps = [.. own, .. check.Steps] };
        }
    }

    /// <summary>Whether a step puts the letter into a measurement.</summary>
    public static bool PutsIn(Step step) => step.Why.Rule.Name == PutInRule;

    private const string PutInRule = "put-in-the-letter";

    private static Calculation PutIn(Ledger ledger, Given given, Letter letter)
    {
        RuleUse why = new(new(PutInRule), [], [ledger.ClaimOf(given.Of), ledger.ClaimOf(letter)]);
        Calculation step = Calculate.By(ledger, ledger.Arrangement.Canonical(given.Of), given.Value, why);
        ledger.Learn(step);
        return step;
    }
}
