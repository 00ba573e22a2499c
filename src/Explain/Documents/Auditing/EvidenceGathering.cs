namespace Explain;

/// <summary>Collects what statements, formulas, phrases and names of the figure bring to a page.</summary>
internal abstract class EvidenceGathering(IClaims claims, Evidence into)
{
    protected IClaims Claims { get; } = claims;

    protected Evidence Into { get; } = into;

    public void Take(Statement statement)
    {
        switch (statement)
        {
            case Compare compare: foreach (Expr term in compare.Terms) Take(term); break;
            case Place place: foreach (Named named in place.Of) Take(named); break;
            case Alike alike: Take(alike.First); Take(alike.Second); break;
            case All all: foreach (Statement one in all.Of) Take(one); break;
            case AnyOf any: foreach (Statement one in any.Of) Take(one); break;
            case Varies varies: Take(varies.What); Take(varies.With); break;
            case MostOf most: Take(most.What); Take(most.With); break;
            case Taken taken: Take(taken.Words); break;
            case HowMany many: Take(many); break;
        }
    }

    public void Take(Named named) => Into.Names.UnionWith(ObjectNames.Of(named));

    public void Take(Symbol symbol) => Into.Names.UnionWith(ObjectNames.Of(symbol));

    public void Take(Expr formula)
    {
        foreach (Expr part in formula.Subtrees())
        {
            if (part is SymbolUse use) Take(use.Symbol);
            else if (part is Quantity constant) Take(Value.Of(constant.Amount, constant.Unit));
            else if (part is Power power) Into.Exponents.Add(power.Exponent);
            else if (part is ValueOf of && Claims.ValueOf(of.Claim) is { } claimed) Take(claimed);
        }
    }

    /// <summary>A number of the problem or of a rule: also what its exact form is written with.</summary>
    public void Take(Value value)
    {
        Into.Values.Add(value);
        if (value.Exact is { } exact) Typed(ExactText.Write(exact, decimals: true));
    }

    public void Take(Phrase phrase)
    {
        foreach (Arg arg in phrase.Args) Take(arg);
    }

    /// <summary>An object that a wording may place; a point also as the first and the second of its two places.</summary>
    protected void Placed(Named named)
    {
        Take(named);
        if (named is Point point) Into.Names.UnionWith([point.Name + "₁", point.Name + "₂"]);
    }

    protected void Typed(string text)
    {
        Into.Typed.UnionWith(NumbersInText.Of(text));
        if (text.Contains('²', StringComparison.Ordinal)) Into.Exponents.Add(2);
        if (text.Contains('³', StringComparison.Ordinal)) Into.Exponents.Add(3);
    }

    private void Take(ClaimValue claimed)
    {
        if (claimed is { Value: { } value, IsGiven: true }) Take(value);
        else if (claimed.Value is { } found) Into.Values.Add(found);
        else Take(claimed.Formula);
    }

    private void Take(HowMany many)
    {
        Into.Counts.Add(many.Count);
        Take(many.What);
        foreach (Statement such in many.Such) Take(such);
    }

    private void Take(Arg arg)
    {
        switch (arg)
        {
            case NamedArg named: Placed(named.Is); break;
            case StatementArg statement: Take(statement.Is); break;
            case FormulaArg formula: Take(formula.Is); break;
            case ValueArg value: Into.Values.Add(value.Is); break;
            case PhraseArg phrase: Take(phrase.Is); break;
            case CountArg count: Into.Counts.Add(count.Is); break;
            case TextArg text: Into.Texts.Add(text.Is); break;
            case StepArg steps: foreach (ClaimId id in steps.Are) Numbered(id); break;
            case ListArg list: foreach (Arg one in list.Are) Take(one); break;
        }
    }

    protected void Numbered(ClaimId id)
    {
        if (Claims.NumberOf(id) is { } number) Into.StepNumbers.Add(number);
    }
}
