using Fractions;

namespace Explain;

/// <summary>Reads formulas by recursive descent, bounded in depth. Null means that no formula of the grammar stands there.</summary>
/// <param name="tokens">The tokens.</param>
/// <param name="numbersOnly">Whether only numbers and letters may stand there: no quantity of the figure, no function, no unit.</param>
internal ref struct FormulaReader(ReadOnlySpan<TextToken> tokens, bool numbersOnly)
{
    private readonly ReadOnlySpan<TextToken> tokens = tokens;
    private int depth;
    private int roots;

    /// <summary>The place of the token to be read next.</summary>
    public int At { get; private set; }

    public readonly bool IsAtEnd => At >= tokens.Length;

    public Expr? Sum()
    {
        Expr? sum = Take("−") ? Negated(Product()) : Product();
        while (sum is not null)
        {
            if (Take("+")) sum = Join(sum, Product(), (l, r) => l + r);
            else if (Take("−")) sum = Join(sum, Product(), (l, r) => l - r);
            else break;
        }

        return sum;
    }

    private Expr? Product()
    {
        Expr? product = Run(mayBeFraction: true);
        while (product is not null)
        {
            if (Take("×")) product = Join(product, Run(mayBeFraction: true), (l, r) => l * r);
            else if (Take("÷") || Take("/")) product = Join(product, Run(mayBeFraction: false), (l, r) => l / r);
            else break;
        }

        return product;
    }

    /// <summary>What stands together without a sign, 2x or 31.5(√2 + 1), with its unit.</summary>
    private Expr? Run(bool mayBeFraction)
    {
        Expr? run = Raised(mayBeFraction);
        while (run is not null)
        {
            if (Unit() is { } unit) return Compound(WithUnit.Of(run, unit));
            if (!Continues(run)) break;
            run = Join(run, Raised(mayBeFraction: false), (l, r) => l * r);
        }

        return run;
    }

    /// <summary>5 ft 3 1/2 in and 62° 30′ are one value: a length in the last unit, an angle in degrees.</summary>
    private Expr? Compound(Expr? first)
    {
        while (first is Quantity whole && !numbersOnly && Peek(0).Kind == TokenKind.Number)
        {
            int start = At;
            if (Literal(mayBeFraction: true) is not Quantity rest || UnitWords.At(tokens, At) is not { } next || !next.Unit.SameKind(whole.Unit) || next.Unit.Factor >= whole.Unit.Factor)
            {
                At = start;
                break;
            }

            At = next.End;
            Unit unit = whole.Unit.IsAngle ? whole.Unit : next.Unit;
            first = Exact.Add(Converted(whole.Amount, whole.Unit, unit)!, Converted(rest.Amount, next.Unit, unit)!) is { } sum ? new Quantity(sum, unit) : null;
        }

        return first;
    }

    private readonly bool Continues(Expr run) => Peek(0) is var next && next.Kind switch
    {
        TokenKind.Word => Words.IsLetter(next) || next.Text is "pi" or "sqrt" || (!numbersOnly && (Words.Function(next.Text) is not null || (next.Text == "angle" && run is Quantity))),
        TokenKind.Sign => next.Text is "(" or "√" or "π" || (!numbersOnly && next.Text == "∠" && run is Quantity),
        TokenKind.Name => !numbersOnly && run is Quantity,
        _ => false,
    };

    private Expr? Raised(bool mayBeFraction)
    {
        Expr? of = Primary(mayBeFraction);
        int exponent = Take("²") ? 2 : Take("³") ? 3 : 1;
        if (exponent == 1 && Peek(0).Is("^") && Peek(1) is { Kind: TokenKind.Number, Text: [>= '2' and <= (char)('0' + TextLimits.Exponent)] } power)
        {
            exponent = power.Text[0] - '0';
            At += 2;
        }

        return of is null || exponent == 1 ? of : PlainNumber.Folded(new Power(of, exponent), of);
    }

    private Expr? Primary(bool mayBeFraction)
    {
        TextToken next = Peek(0);
        if (next.Kind == TokenKind.Number) return Literal(mayBeFraction);
        if (Take("(")) return Bracketed();
        if (Take("√") || Take("sqrt")) return Rooted();
        if (Take("π") || Take("pi")) return new Quantity(Exact.Pi, Explain.Unit.None);
        if (!numbersOnly && next.Kind == TokenKind.Word && Words.Function(next.Text) is { } function) return Applied(function);
        if (!numbersOnly && QuantityGrammar.Match(tokens, At) is { } match)
        {
            At = match.End;
            return new SymbolUse(match.Of);
        }

        if (!Words.IsLetter(next)) return null;
        At++;
        return new SymbolUse(new Letter(next.Text));
    }

    private Expr? Bracketed()
    {
        if (++depth > TextLimits.Depth) return null;
        Expr? inside = Sum();
        depth--;
        return Take(")") ? inside : null;
    }

    private Expr? Rooted()
    {
        if (++depth > TextLimits.Depth || ++roots > TextLimits.Roots) return null;
        Expr? of = Primary(mayBeFraction: false);
        depth--;
        return of is null ? null : PlainNumber.Folded(new Root(of), of);
    }

    /// <summary>A function of an angle named by its points, of a bracket, or of a number or letter with its unit.</summary>
    private Expr? Applied(Function function)
    {
        At++;
        if (Take("⁻¹"))
        {
            if (Words.Inverse(function) is not { } inverse) return null;
            function = inverse;
        }

        if (QuantityGrammar.AngleAt(tokens, At) is { } angle)
        {
            At = angle.End;
            return new Apply(function, new SymbolUse(angle.Of));
        }

        if (++depth > TextLimits.Depth) return null;
        Expr? of = Raised(mayBeFraction: false);
        if (of is Quantity && Words.IsLetter(Peek(0)) && UnitWords.At(tokens, At) is null) of = Join(of, Raised(mayBeFraction: false), (l, r) => l * r);
        depth--;
        if (of is not null && Unit() is { } unit) of = Compound(WithUnit.Of(of, unit));
        return of is null ? null : new Apply(function, of);
    }

    /// <summary>9.5, 3/4 and 1 1/2 without a space at the stroke, 12 500 in groups of three.</summary>
    private Expr? Literal(bool mayBeFraction)
    {
        if (PlainNumber.Decimal(Grouped()) is not { } value) return null;
        if (mayBeFraction && value.Denominator.IsOne && Peek(0) is { Kind: TokenKind.Number, Spaced: true } && FractionAt(At) is { } part)
        {
            At += 3;
            return new Quantity(Exact.Of(value + part), Explain.Unit.None);
        }

        if (mayBeFraction && FractionAt(At - 1) is { } fraction)
        {
            At += 2;
            value = fraction;
        }

        return new Quantity(Exact.Of(value), Explain.Unit.None);
    }

    private string Grouped()
    {
        string text = tokens[At++].Text;
        bool mayGroup = text.Length <= 3 && text[0] != '0' && !text.Contains('.');
        while (mayGroup && text.Length <= TextLimits.Digits && Peek(0) is { Kind: TokenKind.Number, Spaced: true } next
            && (next.Text.Length == 3 || next.Text.IndexOf('.') == 3) && !Peek(1).Is("/"))
        {
            mayGroup = next.Text.Length == 3;
            text += next.Text;
            At++;
        }

        return text;
    }

    private readonly Fraction? FractionAt(int at) =>
        at >= 0 && at + 2 < tokens.Length && tokens[at].Kind == TokenKind.Number && tokens[at + 1] is { Text: "/", Spaced: false } && tokens[at + 2] is { Kind: TokenKind.Number, Spaced: false }
        && PlainNumber.Decimal(tokens[at].Text) is { } top && PlainNumber.Decimal(tokens[at + 2].Text) is { } bottom
        && top.Denominator.IsOne && bottom.Denominator.IsOne && !bottom.IsZero ? top / bottom : null;

    private Unit? Unit()
    {
        if (numbersOnly || UnitWords.At(tokens, At) is not { } read) return null;
        At = read.End;
        return read.Unit;
    }

    private bool Take(string sign)
    {
        if (!Peek(0).Is(sign)) return false;
        At++;
        return true;
    }

    private readonly TextToken Peek(int ahead) => At + ahead < tokens.Length ? tokens[At + ahead] : default;

    private static Expr? Negated(Expr? of) => of is Quantity q ? new Quantity(q.Amount.Negate(), q.Unit) : of is null ? null : new Negative(of);

    private static Expr? Join(Expr left, Expr? right, Func<Expr, Expr, Expr> by) => right is null ? null : PlainNumber.Folded(by(left, right), left, right);

    private static Exact? Converted(Exact amount, Unit from, Unit to) => Exact.Multiply(amount, Exact.Of(from.FactorTo(to)));
}
