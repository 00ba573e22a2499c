namespace Explain;

/// <summary>Lays out formulas and comparisons. Values inside a formula have no length unit; a value that stands alone has.</summary>
/// <param name="style">The notation.</param>
/// <param name="claims">Where values come from.</param>
internal sealed class MathBuilder(MathStyle style, IClaims claims)
{
    /// <summary>In the grammar the names of quantities begin with it.</summary>
    private const string Article = "the ";

    private static readonly MathPiece Minus = new MathMark("−");

    /// <summary>A formula.</summary>
    /// <param name="expr">The formula.</param>
    /// <param name="instead">What is laid out in place of a part; null for the part itself.</param>
    public MathPiece Formula(Expr expr, Func<Expr, MathPiece?>? instead = null) => Build(expr, false, instead ?? (_ => null));

    /// <summary>A term of a comparison: a value that stands alone keeps its unit.</summary>
    public MathPiece Term(Expr expr) => Build(expr, true, _ => null);

    public MathPiece Compare(Compare compare)
    {
        bool units = compare.Between.All(r => r == Relation.Equal) || !compare.Terms.Any(t => IsSumOfNumbers(t));
        List<MathPiece> row = [];
        for (int i = 0; i < compare.Terms.Count; i++)
        {
            if (i > 0) row.Add(Sign(compare.Between[i - 1]));
            row.Add(compare.Terms[i] is SymbolUse use ? Side(use.Symbol) : Build(compare.Terms[i], units, _ => null));
        }

        return new MathRow([.. row], MathLevel.Relation);
    }

    /// <summary>Terms that are equal, one after another; a term that looks like the one before is left out.</summary>
    public static MathPiece Chain(params IEnumerable<MathPiece> terms)
    {
        List<MathPiece> row = [];
        foreach (MathPiece term in terms)
        {
            if (row.Count > 0 && row[^1] == term) continue;
            if (row.Count > 0) row.Add(Sign(Relation.Equal));
            row.Add(term);
        }

        return row.Count == 1 ? row[0] : new MathRow([.. row], MathLevel.Relation);
    }

    /// <summary>A value in working, cut and not rounded, with its unit.</summary>
    public MathPiece Value(Value value, bool isGiven = false) => Amount(value, isGiven, units: true);

    /// <summary>A value in its exact form, with fractions or with decimals where they end.</summary>
    public MathPiece InRoots(Value value, bool fractions) => InRoots(value, fractions, units: true) ?? Number(NumberText.Cut(value, NumberStyle.For(value.Unit, style.Figures)), value.Unit);

    /// <summary>A value in working without a unit of length.</summary>
    public MathPiece Number(Value value) => Amount(value, isGiven: false, units: false);

    /// <summary>A number as shown, with its unit.</summary>
    public MathPiece Number(Shown shown, Unit unit, bool units = true) =>
        WithUnit(new MathNumber(style.Comma ? shown.Digits.Replace('.', ',') : shown.Digits, shown.Continues), unit, units);

    /// <summary>A quantity of the figure by its name.</summary>
    public MathPiece Symbol(Symbol symbol) => symbol switch
    {
        Length l => new MathName(l.From.Name + l.To.Name),
        Letter l => new MathName(l.Name),
        Angle a => Angle(a, style.English == English.UnitedStates ? new MathMark("m∠") : new MathWords("angle ")),
        Ratio r => Apply(r.Function, Argument(r.Of)),
        _ => new MathRow([.. QuantityGrammar.Pieces(symbol, style.English).Select(p => p.Named is null ? new MathWords(p.Words) : (MathPiece)new MathName(p.Words))], MathLevel.Atom),
    };

    /// <summary>A quantity that is one side of an equation: by its name, half a perimeter as s.</summary>
    public MathPiece Side(Symbol symbol) => symbol is Measure { Kind: MeasureKind.HalfPerimeter } ? new MathName(ObjectNames.HalfPerimeter) : Symbol(symbol);

    /// <summary>A quantity where it stands in a formula: a name of several words without its article.</summary>
    private MathPiece InFormula(Symbol symbol) =>
        Side(symbol) is MathRow { Of: [MathWords { Text: var words }, ..] } row && words.StartsWith(Article, StringComparison.Ordinal)
            ? row with { Of = [new MathWords(words[Article.Length..]), .. row.Of.Skip(1)] } : Side(symbol);

    public static MathSign Sign(Relation relation) => new(Relations.Sign(relation));

    private MathPiece Build(Expr expr, bool units, Func<Expr, MathPiece?> instead)
    {
        return instead(expr) ?? expr switch
        {
            Quantity q => Amount(Explain.Value.Of(q.Amount, q.Unit), isGiven: true, units),
            SymbolUse use => InFormula(use.Symbol),
            ValueOf of => Claimed(of, units, instead),
            Sum s => Row(MathLevel.Sum, Inner(s.Left), new MathSign("+"), After(Inner(s.Right))),
            Difference d => Row(MathLevel.Sum, Inner(d.Left), new MathSign("−"), Held(d.Right, MathLevel.Product)),
            Product { Right: Quantity { Unit.Power: > 0, Amount: var one } unit } p when one == Exact.One => Expressed(Inner(p.Left), unit.Unit, units),
            Product p => Product(p, instead),
            Quotient q => new MathFraction(Inner(q.Left), Inner(q.Right)),
            Power p => new MathPower(Inner(p.Base) is var raised && raised is MathNumber or MathName or MathBrackets && raised.Level == MathLevel.Atom ? raised : new MathBrackets(raised), p.Exponent),
            Root r => new MathRoot(Inner(r.Of)),
            Negative n => Row(MathLevel.Sum, Minus, Held(n.Of, MathLevel.Product)),
            Apply a => Apply(a.Function, a.To is SymbolUse { Symbol: Angle angle } ? Argument(angle) : Held(a.To, MathLevel.Atom)),
            _ => throw new ArgumentException(expr.GetType().Name, nameof(expr)),
        };

        MathPiece Inner(Expr part) => Build(part, false, instead);

        MathPiece Held(Expr part, MathLevel least) => Inner(part) is var piece && piece.Level < least ? new MathBrackets(piece) : piece;
    }

    /// <summary>An expression with its unit: 3x°, (2x + 10)°, (x + 3) cm; in a formula a length stands without.</summary>
    private static MathPiece Expressed(MathPiece number, Unit unit, bool units) => !(units || unit.IsAngle) ? number
        : Row(MathLevel.Atom, number is MathRow row && row.Of.Any(p => p is MathSign) || number.Level < MathLevel.Product ? new MathBrackets(number) : number, new MathUnit(unit));

    private MathPiece Product(Product product, Func<Expr, MathPiece?> instead)
    {
        MathPiece left = Factor(product.Left), right = Factor(product.Right);
        return IsCoefficient(product.Left) && product.Right is SymbolUse { Symbol: Letter } or Power { Base: SymbolUse { Symbol: Letter } }
            ? Row(MathLevel.Product, left, right)
            : Row(MathLevel.Product, left, new MathSign(style.Times), right);

        MathPiece Factor(Expr part) => Build(part, false, instead) is var piece && piece.Level < MathLevel.Product ? new MathBrackets(piece) : piece;
    }

    private static bool IsCoefficient(Expr left) => left is Quantity { Unit.Power: 0 } or Product { Left: Quantity { Unit.Power: 0 }, Right: SymbolUse { Symbol: Letter } } or SymbolUse { Symbol: Letter };

    /// <summary>What stands behind a plus: in brackets where it begins with a minus.</summary>
    private static MathPiece After(MathPiece piece) => BeginsWithMinus(piece) ? new MathBrackets(piece) : piece;

    private static bool BeginsWithMinus(MathPiece piece) => piece switch
    {
        MathNumber n => n.Digits.StartsWith('−'),
        MathRow { Of: [var first, ..] } => first == Minus || BeginsWithMinus(first),
        _ => false,
    };

    private static bool IsSumOfNumbers(Expr term) => term is Explain.Sum or Explain.Difference or Explain.Product or Explain.Quotient && !term.Subtrees().OfType<SymbolUse>().Any();

    private MathPiece Claimed(ValueOf of, bool units, Func<Expr, MathPiece?> instead) => claims.ValueOf(of.Claim) switch
    {
        null => new MathName(of.Claim.Name),
        { Value: { } value, IsGiven: var given } => ThreeFigures.Of(Target(of.Claim), Amount(value, given, units)),
        { Formula: var formula } => Build(formula, units, instead),
    };

    private Symbol? Target(ClaimId claim) => claims.Find(claim) switch
    {
        Calculation c => c.Target,
        { Says: Compare { Terms: [SymbolUse use, ..] } } => use.Symbol,
        _ => null,
    };

    private MathPiece Amount(Value own, bool isGiven, bool units)
    {
        Value value = style.Lengths is { } lengths ? own.WithLengths(lengths) : own;
        if ((isGiven && value.Unit == own.Unit || style.Exact) && InRoots(value, style.Exact && style.Fractions, units) is { } exact) return exact;
        return Number(NumberText.Cut(value, NumberStyle.For(value.Unit, style.Figures)), value.Unit, units);
    }

    /// <summary>A value in its exact form; null where it has none, or is written as a decimal that ends.</summary>
    private static MathPiece? InRoots(Value value, bool fractions, bool units) => value.Exact is not { } exact || exact.Rational is { } rational
        && Decimals.PlacesOf(rational) is not null && (rational.Denominator.IsOne || value.Unit.IsAngle || !fractions)
        ? null : WithUnit(MathReader.Read(ExactText.Write(exact, decimals: !fractions)), value.Unit, units);

    public static MathPiece WithUnit(MathPiece number, Unit unit, bool units) =>
        unit.Power == 0 || !(units || unit.IsAngle) ? number
        : new MathRow([number.Level == MathLevel.Sum && number is MathRow ? new MathBrackets(number) : number, new MathUnit(unit)], number is MathNumber ? number.Level : MathLevel.Atom);

    private MathPiece Argument(Angle angle) => style.English == English.UnitedStates ? Angle(angle, new MathMark("∠")) : Letters(angle);

    private static MathPiece Angle(Angle angle, MathPiece mark) =>
        angle.Reflex ? Row(MathLevel.Atom, new MathWords("reflex "), mark, Letters(angle)) : Row(MathLevel.Atom, mark, Letters(angle));

    private static MathName Letters(Angle angle) => new(angle.First.Name + angle.Vertex.Name + angle.Second.Name);

    private static MathFunction Apply(Function function, MathPiece of) => new(function, of);

    private static MathRow Row(MathLevel level, params Items<MathPiece> of) => new(of, level);
}
