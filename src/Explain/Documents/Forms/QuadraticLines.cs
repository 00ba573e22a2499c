namespace Explain;

/// <summary>The lines of a quadratic equation: the law with its numbers, the equation in its letter, the formula for the roots, the roots.</summary>
internal sealed class QuadraticLines(Page page)
{
    private static readonly MathPiece Minus = new MathMark("−");
    private readonly Speaker speaker = page.Speaker;

    public Items<MathPiece> Of(Quadratic q)
    {
        MathName t = new(q.Named.Name);
        MathPiece[] roots = [.. q.Roots.SelectMany((r, i) => i == 0 ? (MathPiece[])[speaker.Math.Number(r.Value)] : [Join(StepWords.Or()), speaker.Math.Number(r.Value)])];
        return
        [
            new MathRow([.. ((MathRow)speaker.Math.Compare(WithNumbers(q))).Of, Join(StepWords.So()), .. Polynomial(q, t), Equal, Whole("0")], MathLevel.Relation),
            new MathRow([t, Equal, Formula(q), Equal, .. roots], MathLevel.Relation),
        ];
    }

    private static MathSign Equal => MathBuilder.Sign(Relation.Equal);

    /// <summary>1.8² = 2.5² + t² − 2 × 2.5 × t × cos 38°.</summary>
    private static Compare WithNumbers(Quadratic q)
    {
        Binding[] known = [.. q.Linear.Bindings, .. q.Constant.Bindings];
        return q.Law with { Terms = [.. q.Law.Terms.Select(term => term.Substitute(e => e is not SymbolUse use ? null : use.Symbol == q.For ? new SymbolUse(q.Named) : known.First(b => b.Of == use.Symbol).Is))] };
    }

    /// <summary>t² − 3.940…t + 3.01.</summary>
    private IEnumerable<MathPiece> Polynomial(Quadratic q, MathName t)
    {
        yield return new MathPower(t, 2);
        if (SignOf(q.Linear) != 0)
        {
            MathPiece size = Size(q.Linear);
            yield return SignBefore(q.Linear);
            if (size is not MathNumber { Digits: "1", Continues: false }) yield return size;
            if (size is MathNumber { Continues: true }) yield return new MathWords(" ");
            yield return t;
        }

        if (SignOf(q.Constant) == 0) yield break;
        yield return SignBefore(q.Constant);
        yield return Size(q.Constant);
    }

    /// <summary>(3.940… ± √(3.940…² − 4 × 3.01)) ÷ 2, without what is 0.</summary>
    private MathPiece Formula(Quadratic q)
    {
        if (SignOf(q.Linear) == 0) return new MathRow([new MathMark("±"), new MathRoot(Size(q.Constant))], MathLevel.Sum);
        MathPiece[] begins = SignOf(q.Linear) > 0 ? [Minus, Size(q.Linear)] : [Size(q.Linear)];
        MathPiece square = new MathPower(Size(q.Linear), 2);
        MathSign sign = new(SignOf(q.Constant) > 0 ? "−" : "+");
        MathPiece under = SignOf(q.Constant) == 0 ? square : new MathRow([square, sign, Whole("4"), new MathSign(speaker.Style.Times), Size(q.Constant)], MathLevel.Sum);
        return new MathFraction(new MathRow([.. begins, new MathSign("±"), new MathRoot(under)], MathLevel.Sum), Whole("2"));
    }

    private static MathNumber Whole(string digits) => new(digits, Continues: false);

    private static int SignOf(Calculation of) => of.Value.Exact?.Sign ?? of.Value.True.Sign ?? throw new UndecidedException();

    private static MathSign SignBefore(Calculation of) => new(SignOf(of) > 0 ? "+" : "−");

    /// <summary>The value without its sign.</summary>
    private MathPiece Size(Calculation of) => speaker.Math.Number(SignOf(of) > 0 ? of.Value : page.Claims.Evaluate(-(Expr)new ValueOf(of.Id))!);

    private MathJoin Join(Phrase phrase) => new(string.Concat(speaker.Say(phrase).OfType<WordRun>().Select(w => w.Text)));
}
