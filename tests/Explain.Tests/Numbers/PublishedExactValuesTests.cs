using System.Globalization;
using Explain.Tests.Published;
using Fractions;

namespace Explain.Tests.Numbers;

public sealed class PublishedExactValuesTests
{
    public static TheoryData<string> Ids => [.. PublishedRow.All("published-exact-values").Select(r => r.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_printed_form_is_ours(string id)
    {
        PublishedRow row = PublishedRow.All("published-exact-values").Single(r => r.Id == id);
        Assert.NotEmpty(row.Source);
        string[] asked = row.Find.TrimEnd('°').Split(' ');
        Fraction degrees = Fraction.FromString(asked[1], CultureInfo.InvariantCulture);
        Exact value = asked[0] switch
        {
            "sin" => SpecialAngles.Sin(degrees)!,
            "cos" => SpecialAngles.Cos(degrees)!,
            _ => SpecialAngles.Tan(degrees)!,
        };
        if (row.Tolerance == "exact")
        {
            Assert.Equal(ExactReader.Read(row.Expected), value);
            return;
        }

        string digits = row.Expected.TrimEnd('.');
        int places = digits.Length - 1 - digits.IndexOf('.', StringComparison.Ordinal);
        Assert.Equal(digits, Decimals.Write(Decided.Floor(Value.Of(value, Unit.None), Decimals.TenTo(places), Fraction.Zero), places));
    }

    [Fact]
    public void All_rows_are_there() => Assert.Equal(33, Ids.Count);
}
