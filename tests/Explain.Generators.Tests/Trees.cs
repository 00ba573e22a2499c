using System.Globalization;

namespace Explain.Generators.Tests;

/// <summary>Writes a tree with every bracket, to compare.</summary>
internal static class Trees
{
    public static string Write(Expr expr) => expr switch
    {
        Sum s => $"({Write(s.Left)}+{Write(s.Right)})",
        Difference d => $"({Write(d.Left)}-{Write(d.Right)})",
        Product p => $"({Write(p.Left)}*{Write(p.Right)})",
        Quotient q => $"({Write(q.Left)}/{Write(q.Right)})",
        Negative n => "-" + Write(n.Of),
        Power p => Write(p.Base) + "^" + p.Exponent.ToString(CultureInfo.InvariantCulture),
        Root r => "√" + Write(r.Of),
        Apply a => $"{a.Function}({Write(a.To)})",
        SymbolUse { Symbol: Letter letter } => letter.Name,
        Quantity q => (q.Amount == Exact.Pi ? "π" : q.Amount.ToString()) + q.Unit,
        _ => expr.ToString(),
    };
}
