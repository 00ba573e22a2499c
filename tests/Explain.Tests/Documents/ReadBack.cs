namespace Explain.Tests.Documents;

/// <summary>A second reader of printed formulas, in doubles: × and ÷ from left to right, powers first.</summary>
internal sealed class ReadBack
{
    private readonly string text;
    private int at;

    private ReadBack(string text) => this.text = text.Replace("\u202F", "", StringComparison.Ordinal).Replace(" ", "", StringComparison.Ordinal);

    public static double? Value(string text)
    {
        ReadBack reader = new(text);
        double value = reader.Sum();
        return reader.at == reader.text.Length ? value : null;
    }

    private char Next => at < text.Length ? text[at] : '\0';

    private double Sum()
    {
        double sum = Take('−') ? -Product() : Product();
        while (Next is '+' or '−') sum += text[at++] == '+' ? Product() : -Product();
        return sum;
    }

    private double Product()
    {
        double product = Power();
        while (Next is '×' or '÷' or '/') product = text[at++] == '×' ? product * Power() : product / Power();
        return product;
    }

    private double Power()
    {
        double factor = Factor();
        while (Take('²')) factor *= factor;
        return factor;
    }

    private double Factor()
    {
        if (Take('√')) return Math.Sqrt(Factor());
        if (Take('('))
        {
            double inside = Sum();
            Assert.True(Take(')'), text);
            return inside;
        }

        int start = at;
        while (char.IsAsciiDigit(Next) || Next == '.') at++;
        return double.Parse(text.AsSpan(start, at - start), System.Globalization.CultureInfo.InvariantCulture);
    }

    private bool Take(char sign)
    {
        if (Next != sign) return false;
        at++;
        return true;
    }
}
