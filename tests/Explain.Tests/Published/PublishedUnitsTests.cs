using System.Globalization;
using Explain.Tests.Numbers;

namespace Explain.Tests.Published;

/// <summary>Rows about units that are read as measurements or worked out; plain factors are held in the tests of units.</summary>
public sealed class PublishedUnitsTests
{
    /// <summary>Units of land and of old surveys, which problem files do not have.</summary>
    private static readonly string[] NotInTheTable = ["UNI-007.1", "UNI-008.1", "UNI-011.1", "UNI-012.1", "UNI-013.1", "UNI-014.1"];

    private static readonly string[] Factors =
        ["UNI-001.1", "UNI-002.1", "UNI-003.1", "UNI-003.2", "UNI-004.1", "UNI-005.1", "UNI-006.1", "UNI-009.1", "UNI-010.1", "UNI-015.1", "UNI-017.1", "UNI-019.1", "UNI-021.1"];

    [Theory]
    [InlineData("UNI-019.1", "4° 30′ 18″")]
    [InlineData("UNI-020.1", "16′ 2″")]
    public void MinutesAndSeconds_AreReadAsDegrees(string id, string typed)
    {
        PublishedRow row = Row(id);
        Assert.StartsWith(typed, row.Find, StringComparison.Ordinal);
        Assert.True(ValueReader.TryRead(typed, out GivenValue? read, out _));
        double degrees = Value.Of(read!.Number!, read.Unit).In(Unit.Degree).Number;
        Assert.InRange(degrees - double.Parse(row.Expected.TrimEnd('°'), CultureInfo.InvariantCulture), row.Tolerance == "exact" ? -1e-15 : -5e-6, row.Tolerance == "exact" ? 1e-15 : 5e-6);
    }

    [Theory]
    [InlineData("UNI-016.1")]
    [InlineData("UNI-018.1")]
    public void Radians_AreExactInDegrees(string id)
    {
        PublishedRow row = Row(id);
        Exact radians = ExactReader.Read(row.Find.Split(' ')[0]);
        Assert.Equal(ExactReader.Read(row.Expected.TrimEnd('°')), Exact.Divide(Exact.Multiply(radians, Exact.Of(180))!, Exact.Pi));
    }

    [Fact]
    public void AnArea_IsConvertedWithTheSquareOfTheFactor()
    {
        PublishedRow row = Row("UNI-021.2");
        Expr area = new Product(new Quantity(Exact.Of(55), Unit.Yard), new Quantity(Exact.Of(39), Unit.Yard));
        Value feet = Assert.IsType<Evaluated>(Evaluator.Evaluate(area)).Value.In(Unit.Foot.To(2));
        Assert.Equal(ExactReader.Read(row.Expected.Split(' ')[0]), feet.Exact);
    }

    [Fact]
    public void EveryRow_IsTestedOrAboutAUnitThatIsNotRead() => Assert.Equal(PublishedRow.All("published-units").Select(r => r.Id).Order(StringComparer.Ordinal),
        Factors.Concat(NotInTheTable).Concat(["UNI-016.1", "UNI-018.1", "UNI-020.1", "UNI-021.2"]).Order(StringComparer.Ordinal));

    private static PublishedRow Row(string id) => PublishedRow.All("published-units").Single(r => r.Id == id);
}
