namespace Explain;

/// <summary>What one place of a page may show: all of it comes from the problem and from the claims that the place prints.</summary>
/// <param name="claims">Where values come from.</param>
/// <param name="lengths">The unit of lengths in working; null where no length is given.</param>
internal sealed class Evidence(IClaims claims, Unit? lengths)
{
    private readonly Dictionary<Expr, Value?> evaluated = [];

    /// <summary>Whether values in working stand in their exact forms.</summary>
    public bool IsExact { get; init; }

    /// <summary>Names of objects of the figure, and letters.</summary>
    public HashSet<string> Names { get; } = new(StringComparer.Ordinal);

    /// <summary>Numbers as they are typed, and those inside exact forms.</summary>
    public HashSet<string> Typed { get; } = new(StringComparer.Ordinal);

    /// <summary>What the user wrote, letters of parts and names of cases.</summary>
    public HashSet<string> Texts { get; } = new(StringComparer.OrdinalIgnoreCase);

    public HashSet<string> StepNumbers { get; } = new(StringComparer.Ordinal);

    public HashSet<int> Counts { get; } = [];

    public HashSet<int> Exponents { get; } = [];

    public HashSet<string> Rules { get; } = new(StringComparer.Ordinal);

    public HashSet<Value> Values { get; } = [];

    /// <summary>Formulas whose values may be shown.</summary>
    public HashSet<Expr> Formulas { get; } = [];

    public List<AnswerValue> Answers { get; } = [];

    /// <summary>Whether the place may show a number: as typed, cut from a value, or as an answer.</summary>
    public bool Holds(MathNumber number) => !number.Continues && Typed.Contains(PrintedNumber.Plain(number.Digits))
        || PrintedNumber.Read(number) is { } printed && (Shown.Any(v => Shows(printed, v)) || Answers.Any(printed.Answers))
        || IsExact && !number.Continues && Shown.SelectMany(v => InUnits(v)).Any(v => v.Exact is { } exact && IsIn(exact, PrintedNumber.Plain(number.Digits)));

    private static bool IsIn(Exact exact, string digits) => new[] { true, false }.Any(decimals => NumbersInText.Of(ExactText.Write(exact, decimals)).Contains(digits));

    private IEnumerable<Value> Shown => Values.Concat(Formulas.Select(Evaluate).OfType<Value>());

    /// <summary>A length may also stand in the unit that the page works in.</summary>
    private Items<Value> InUnits(Value value) => lengths is null ? [value] : [value, value.WithLengths(lengths)];

    private bool Shows(PrintedNumber printed, Value value) => InUnits(value).Any(printed.Shows);

    private Value? Evaluate(Expr formula) => evaluated.TryGetValue(formula, out Value? known) ? known : evaluated[formula] = claims.Evaluate(formula);
}
