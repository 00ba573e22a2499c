using System.Globalization;

namespace Explain;

/// <summary>Collects what the claims of a solution bring to the places that print them.</summary>
internal sealed class SolutionGathering(Solution solution, IClaims claims, Evidence into) : EvidenceGathering(claims, into)
{
    private readonly ProblemGathering problem = new(solution.Of, claims, into);

    /// <summary>What stands outside every step: the problem, assumptions, cautions, headings and answers.</summary>
    public void TakePage()
    {
        problem.Take();
        foreach (Premise premise in solution.Premises) TakeClaim(premise);
        foreach (Phrase caution in solution.Cautions) Take(caution);
        foreach (Phrase several in solution.Parts.Select(p => p.Several).OfType<Phrase>()) Take(several);
        foreach (Passage passage in solution.Parts.SelectMany(p => p.Passages))
        {
            if (passage.Heading is { } heading) Take(heading);
            foreach (Remark remark in passage.Remarks) Take(remark.Says);
        }

        foreach (AnswerValue answer in solution.Parts.SelectMany(p => p.Answers).SelectMany(a => a.Values)) Take(answer);
        Into.Counts.Add(solution.Parts.SelectMany(p => p.Answers).SelectMany(a => a.Values).Select(v => v.Case).Distinct().Count());
    }

    /// <summary>A step that a place prints: all it says, its reason, and what it rests on.</summary>
    public void TakeStep(ClaimId id)
    {
        problem.TakeWords();
        if (Claims.Find(id) is not Step step) return;
        TakeClaim(step);
        Numbered(id);
        Use(step.Why);
        if (step.Title is { } title) Take(title);
        foreach (Remark remark in step.Remarks) Take(remark.Says);
        Own(step);
    }

    private void Own(Step step)
    {
        switch (step)
        {
            case Calculation calculation: Own(calculation); break;
            case Algebra algebra: Own(algebra); break;
            case Quadratic quadratic: Own(quadratic); break;
            case Instruction instruction: Take(instruction.Act); break;
            case Series series: foreach (Phrase words in series.Columns.Concat(series.Rows.Select(r => r.Label))) Take(words); break;
            case Split split: foreach (Case one in split.Cases) Own(one); break;
            case Deduction { Says: Compare compare }: foreach (Expr term in compare.Terms) Formula(Valued(term, step.Why.From)); break;
        }
    }

    private void Own(Calculation calculation)
    {
        foreach (Compare law in calculation.Law) Take(law);
        Take(calculation.Formula);
        foreach (Binding binding in calculation.Bindings) Take(binding.Is);
        foreach (ClaimId bound in calculation.Bindings.SelectMany(b => b.Is.Claims())) Rest(bound);
        Formula(SolutionClaims.Bound(calculation));
    }

    /// <summary>The equation has 0 on its right side, and its coefficients are printed without their signs.</summary>
    private void Own(Quadratic quadratic)
    {
        Take(quadratic.Law);
        Take(quadratic.Named);
        Take(Value.Of(Exact.Zero, Unit.None));
        Into.Formulas.UnionWith(new[] { quadratic.Linear, quadratic.Constant }.Select(c => -(Expr)new ValueOf(c.Id)));
    }

    /// <summary>The lines of an algebra are numbered up to the number of the last.</summary>
    private void Own(Algebra algebra)
    {
        Take(algebra.Start);
        if (Claims.NumberOf(algebra.Id) is { } number && int.TryParse(number, CultureInfo.InvariantCulture, out int last))
            Into.StepNumbers.UnionWith(Enumerable.Range(0, algebra.Lines.Count).Select(i => (last - i).ToString(CultureInfo.InvariantCulture)));
        foreach (EquationLine line in algebra.Lines)
        {
            Take(line.Says.Left);
            Take(line.Says.Right);
            if (line.By.With is { } with) Take(with);
        }
    }

    private void Own(Case one)
    {
        Into.Texts.Add(one.Name);
        Take(one.Assume);
        if (one.Label is { } label) Take(label.Says);
    }

    /// <summary>What a claim says, and its value.</summary>
    private void TakeClaim(Claimed claim)
    {
        Take(claim.Says);
        if (claim is Calculation calculation) Into.Values.Add(calculation.Value);
        if (claim is not Premise premise) return;
        if (premise.Within is { } within) Take(within);
        foreach (Given given in solution.Of.Given.Where(g => premise.Says == Compare.Equal(g.Of, g.Value))) problem.Take(given);
    }

    private void Use(RuleUse why)
    {
        Into.Rules.Add(why.Rule.Name);
        foreach (ClaimId id in why.From) Rest(id);
        foreach (Role role in why.Roles) Take(role.Is);
    }

    private void Take(RoleValue role)
    {
        switch (role)
        {
            case Amount amount: Take(amount.Is); break;
            case Holding holding: Rest(holding.Claim); break;
            case Links links: foreach (Link link in links.Are) Take(link.Says); break;
            case Objects objects: foreach (Named named in objects.Are) Placed(named); break;
        }
    }

    private void Rest(ClaimId id)
    {
        Numbered(id);
        if (Claims.Find(id) is { } claim) TakeClaim(claim);
    }

    /// <summary>A formula with values of claims: the value of each of its parts may be shown.</summary>
    private void Formula(Expr formula)
    {
        Take(formula);
        Into.Formulas.UnionWith(formula.Subtrees().Where(p => p is not (Quantity or ValueOf or SymbolUse)));
    }

    private Expr Valued(Expr term, Items<ClaimId> from) => term.Substitute(e => e is SymbolUse use
        ? from.Where(id => Claims.QuantityOf(id) == use.Symbol).Select(id => new ValueOf(id)).FirstOrDefault() : null);

    private void Take(AnswerValue answer)
    {
        Into.Answers.Add(answer);
        if (Claims.Find(answer.From) is { } claim) TakeClaim(claim);
        if (answer.Case is { } name) Into.Texts.Add(name);
        if (answer.Value is not { } value) return;
        Rounding rule = AnswerText.RoundingOf(answer, value);
        Into.Counts.Add(rule.ForDecimals(value.Unit).Digits);
        if (rule is { Kind: RoundingKind.Nearest, Fractions: true }) Typed(ExactText.Write(Exact.Of(rule.Step), decimals: false));
        if (rule.Kind == RoundingKind.Nearest) Take(Value.Of(Exact.Of(rule.Step), rule.Unit ?? Unit.None));
        if (rule.Exact && value.Exact is not null) Take(value.In(rule.UnitFor(value.Unit)));
    }
}
