using CsCheck;
using Fractions;

namespace Explain.Tests;

/// <summary>Draws objects, formulas and statements as a reader may meet them.</summary>
internal static class RandomFigures
{
    private static readonly string[] Names = [.. Enumerable.Range('A', 26).Select(c => ((char)c).ToString()), "B₁", "B₂", "A′", "C′", "P₁₂"];

    public static Gen<Point[]> Points(int count) => Gen.Shuffle(Names, count, count).Select(n => n.Select(name => new Point(name)).ToArray());

    /// <summary>A quantity of any row of the table.</summary>
    public static readonly Gen<Symbol> Quantity = Gen.Int[0, QuantityTable.Rows.Count - 1].SelectMany(i => Filled(QuantityTable.Rows[i].Row).Select(f => QuantityTable.Rows[i].Make(f.Of)));

    public static readonly Gen<Symbol> Letters = Gen.Const("xyzkrtθαβ").SelectMany(s => Gen.Int[0, s.Length - 1].Select(Symbol (i) => new Letter(s[i].ToString())));

    public static readonly Gen<Fraction> Decimal = Gen.OneOf(Gen.Int[1, 400].Select(n => new Fraction(n)), Gen.Int[1, 99_999].Select(n => new Fraction(n, 100)),
        Gen.Select(Gen.Int[1, 40], Gen.Int[1, 40], (a, b) => new Fraction(a, b)));

    public static readonly Gen<Exact> Amount = Gen.OneOf(
        Decimal.Select(Exact.Of),
        Gen.Select(Decimal, Gen.Int[2, 30], (f, n) => Exact.Multiply(Exact.Of(f), Exact.Root(Exact.Of(n))!)!),
        Gen.Select(Decimal, Gen.Int[2, 7], Gen.Int[1, 9], (f, n, m) => Exact.Multiply(Exact.Of(f), Exact.Add(Exact.Root(Exact.Of(n))!, Exact.Of(m))!)!),
        Decimal.Select(f => Exact.Multiply(Exact.Of(f), Exact.Pi)!),
        Gen.Select(Decimal, Decimal, (f, g) => Exact.Add(Exact.Multiply(Exact.Of(f), Exact.Pi)!, Exact.Of(g))!),
        Gen.Select(Gen.Int[30, 60], Gen.Int[1, 4], (a, b) => Exact.Root(Exact.Subtract(Exact.Of(a), Exact.Multiply(Exact.Of(b), Exact.Root(Exact.Of(2))!)!)!)!));

    public static readonly Gen<Unit> AnyUnit = Gen.Int[0, Unit.Table.Count + 3].Select(i => i < Unit.Table.Count ? Unit.Table[i] : Unit.Table[i - Unit.Table.Count].To(2));

    public static readonly Gen<Expr> Value = Gen.Select(Amount, AnyUnit, Expr (amount, unit) => new Quantity(amount, unit));

    /// <summary>A linear expression in letters.</summary>
    public static readonly Gen<Expr> Linear = Gen.Select(Gen.Int[2, 9], Letters, Gen.Int[1, 99], Gen.Int[0, 4], Expr (k, x, n, form) => form switch
    {
        0 => new Product(k, x),
        1 => new Product(k, x) + n,
        2 => (Expr)x - n,
        3 => new Product(k, (Expr)x + n) - n,
        _ => x,
    });

    public static readonly Gen<Expr> Formula = Gen.Recursive<Expr>((depth, formula) => depth > 3
        ? Quantity.Select(Expr (s) => s)
        : Gen.OneOf(
            Quantity.Select(Expr (s) => s),
            Letters.Select(Expr (s) => s),
            Gen.Select(formula, Decimal, Expr (f, n) => f * new Quantity(Exact.Of(n), Unit.None)),
            Gen.Select(formula, formula, Expr (l, r) => l + r),
            Gen.Select(formula, formula, Expr (l, r) => l - r),
            Gen.Select(formula, formula, Expr (l, r) => l * r),
            Gen.Select(formula, formula, Expr (l, r) => l / r),
            Gen.Select(formula, Gen.Int[2, 4], Expr (b, n) => new Power(b, n)),
            formula.Select(Expr (f) => new Root(f)),
            formula.Select(Expr (f) => -f),
            Gen.Select(Gen.Enum<Function>(), formula, Expr (f, to) => new Apply(f, to)),
            Gen.Select(Gen.Enum<Function>(), Gen.Int[0, 90], Expr (f, to) => new Apply(f, Expr.Degrees(to)))));

    public static readonly Gen<Statement> Comparison = Gen.OneOf(
        Gen.Select(Gen.Int[2, 3].SelectMany(n => Points(2 * n)), p => (Statement)Chain([.. p.Chunk(2).Select(Expr (c) => new Length(c[0], c[1]))])),
        Gen.Select(Gen.Int[2, 3].SelectMany(n => Points(3 * n)), p => (Statement)Chain([.. p.Chunk(3).Select(Expr (c) => new Angle(c[0], c[1], c[2]))])),
        Gen.Select(Quantity, Value, Statement (q, v) => Compare.Equal(q, v)),
        Gen.Select(Quantity, Linear, Gen.Bool, Statement (q, e, angle) => Compare.Equal(q, new Product(e, new Quantity(Exact.One, angle ? Unit.Degree : Unit.Metre)))),
        Gen.Select(Letters, Linear, Gen.Enum<Relation>(), Statement (x, e, r) => Compare.Of(x, r, e)),
        Gen.Select(Formula, Formula, Gen.Enum<Relation>(), Statement (a, b, r) => Compare.Of(a, r, b)));

    /// <summary>A statement of any row of the table.</summary>
    public static readonly Gen<Statement> Lying = Gen.Int[0, StatementTable.Rows.Count - 1].SelectMany(i => Filled(StatementTable.Rows[i].Row).Select(f => StatementTable.Rows[i].Make(f.Of)!));

    public static readonly Gen<Statement> Any = Gen.Frequency((3, Lying), (2, Comparison));

    private static Compare Chain(Expr[] terms) => new([.. terms], [.. terms.Skip(1).Select(_ => Relation.Equal)]);

    /// <summary>Objects for the letters of a row's example: those of a shape from its corners where the example takes them from there.</summary>
    public static Gen<FilledRow> Filled(GrammarRow row)
    {
        Items<PatternPart> slots = row.In(English.UnitedKingdom).Slots;
        return Gen.Select(Gen.Int[0, 4], Points(26), (more, points) =>
        {
            Dictionary<string, Items<Named>> filled = [];
            int next = 0;
            Polygon? first = null;
            foreach (PatternPart slot in slots)
            {
                bool fromFirst = first is not null && slot.Example.All(slots.First(s => s.Kind == SlotKind.Polygon).Example.Contains);
                int each = slot.Kind switch { SlotKind.Line => 2, SlotKind.Corner => 3, SlotKind.Polygon => slot.Corners > 0 ? slot.Corners : 4, _ => 1 };
                List<Named> of = [];
                for (int n = slot.IsList ? int.Min(slot.Least + more, first is null ? 9 : 4) : 1; n > 0; n--)
                {
                    Point[] taken = fromFirst ? [.. first!.Corners.Skip(n - 1).Take(each)] : [.. points.Skip(next).Take(each)];
                    if (!fromFirst) next += each;
                    of.Add(slot.Make([.. taken])!);
                }

                filled[slot.Example] = [.. of];
                first ??= of[^1] as Polygon;
            }

            return new FilledRow(row, filled);
        });
    }
}
