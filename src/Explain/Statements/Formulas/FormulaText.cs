namespace Explain;

/// <summary>Writes formulas as plain text that reads back as the same tree.</summary>
internal static class FormulaText
{
    private const int OfSum = 1, OfProduct = 2, OfRun = 3, OfPower = 4, OfName = 5;

    public static string Write(Expr formula, English english) => formula switch
    {
        Sum s => At(s.Left, OfSum, english) + " + " + At(s.Right, OfProduct, english),
        Difference d => At(d.Left, OfSum, english) + " − " + At(d.Right, OfProduct, english),
        Negative n => "−" + At(n.Of, OfProduct, english),
        Product { Right: Quantity { Unit: var unit, Amount: var one } } p when unit != Unit.None && one == Exact.One && IsOpen(p.Left) => Apart(Unital(p.Left, english), unit),
        Product p when IsRun(p) => At(p.Left, OfRun, english) + (p.Right is SymbolUse ? At(p.Right, OfRun, english) : "(" + Write(p.Right, english) + ")"),
        Product p => At(p.Left, OfProduct, english) + Times(english) + At(p.Right, OfRun, english),
        Quotient q => At(q.Left, OfProduct, english) + " ÷ " + At(q.Right, OfRun, english),
        Power p => At(p.Base, OfName, english) + (p.Exponent == 2 ? "²" : p.Exponent == 3 ? "³" : "^" + Digits(p.Exponent)),
        Root r => "√" + (r.Of is SymbolUse { Symbol: Letter } ? Write(r.Of, english) : "(" + Write(r.Of, english) + ")"),
        Apply a => Words.Of(a.Function) + " " + Argument(a.To, english),
        SymbolUse u => QuantityGrammar.Write(u.Symbol, english),
        Quantity q => Number(q),
        _ => throw new ArgumentException(formula.GetType().Name, nameof(formula)),
    };

    /// <summary>A number in the grammar of problem files, decimals where they end.</summary>
    public static string Number(Quantity number)
    {
        string text = number.Amount.Rational is { } rational ? Decimals.InFull(rational) ?? number.Amount.ToString() : ExactText.Write(number.Amount, decimals: true);
        if (number.Unit == Unit.None) return text;
        return Apart(number.Amount.Rational is not null || IsOneRun(number.Amount) ? text : "(" + text + ")", number.Unit);
    }

    private static string Apart(string text, Unit unit) => text + (unit.IsAngle ? "" : " ") + unit.Symbol;

    private static string At(Expr formula, int place, English english) => Place(formula) >= place ? Write(formula, english) : "(" + Write(formula, english) + ")";

    /// <summary>How tightly the text of a formula holds together.</summary>
    private static int Place(Expr formula) => formula switch
    {
        Sum or Difference or Negative => OfSum,
        Quantity { Amount: var amount, Unit: var unit } when unit != Unit.None => amount.Sign < 0 ? OfSum : OfProduct,
        Quantity { Amount: var amount } => amount.Sign < 0 ? OfSum : IsPlain(amount) ? OfName : IsOneRun(amount) ? OfRun : 0,
        Product p when IsRun(p) => OfRun,
        Product or Quotient => OfProduct,
        Apply => OfRun,
        SymbolUse { Symbol: Letter or Length or Angle { Reflex: false } } => OfName,
        SymbolUse => OfRun,
        Power => OfPower,
        _ => OfName,
    };

    private static bool IsPlain(Exact amount) => amount.Rational is { } rational && Decimals.PlacesOf(rational) is not null;

    /// <summary>Whether an irrational number is written without a sign between its parts outside brackets.</summary>
    private static bool IsOneRun(Exact amount) => amount.Rational is null && !OutsideBrackets(ExactText.Write(amount, decimals: true)).Any(c => c is ' ' or '/');

    private static IEnumerable<char> OutsideBrackets(string text)
    {
        int depth = 0;
        foreach (char sign in text)
        {
            depth += sign == '(' ? 1 : sign == ')' ? -1 : 0;
            if (depth == 0) yield return sign;
        }
    }

    /// <summary>A number before a letter or a bracket with letters: 2x, 3(x + 1).</summary>
    private static bool IsRun(Product product) => product.Left is Quantity { Amount: var amount, Unit: var unit } && unit == Unit.None && amount.Sign > 0 && IsPlain(amount)
        && product.Right is SymbolUse { Symbol: Letter } or Sum or Difference && IsOpen(product.Right);

    private static bool IsOpen(Expr formula) => formula.Symbols().Any() && formula.Symbols().All(s => s is Letter);

    /// <summary>What stands before a unit: x, 2x or a bracket.</summary>
    private static string Unital(Expr formula, English english) =>
        formula is SymbolUse || (formula is Product { Right: SymbolUse } p && IsRun(p)) ? Write(formula, english) : "(" + Write(formula, english) + ")";

    private static string Argument(Expr of, English english) => of switch
    {
        SymbolUse { Symbol: Angle angle } => QuantityGrammar.AfterFunction(angle, english),
        SymbolUse { Symbol: Letter } => Write(of, english),
        Quantity { Amount: var amount } q when IsPlain(amount) && amount.Sign >= 0 => Number(q),
        Product { Right: Quantity { Unit: var unit } } p when unit != Unit.None && IsOpen(p.Left) => Write(p, english),
        _ => "(" + Write(of, english) + ")",
    };

    private static string Times(English english) => english == English.UnitedStates ? " · " : " × ";

    private static string Digits(int number) => number.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
