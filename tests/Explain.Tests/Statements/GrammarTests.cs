using CsCheck;

namespace Explain.Tests;

public sealed class GrammarTests
{
    private const int Samples = 10_000;

    [Theory]
    [InlineData(English.UnitedKingdom)]
    [InlineData(English.UnitedStates)]
    public void Every_statement_that_is_printed_reads_back_the_same(English english) => RandomFigures.Any.Sample(
        statement =>
        {
            string printed = StatementGrammar.Write(statement, english);
            return StatementGrammar.Read(printed) is { } read && read.Equals(statement) ? true : throw new InvalidOperationException($"{printed} → {StatementGrammar.Read(printed)}");
        },
        iter: Samples);

    [Fact]
    public void Every_row_of_the_table_is_printed_and_read_in_both_Englishes()
    {
        foreach (StatementRow row in StatementTable.Rows)
        {
            Statement read = StatementGrammar.Read(row.Row.In(English.UnitedKingdom).Text.Replace(", …", "", StringComparison.Ordinal))!;
            Assert.True(row.Take(read) is not null, $"{row.Row.In(English.UnitedKingdom).Text}: {read}");
            foreach (English english in Enum.GetValues<English>()) Assert.Equal(read, StatementGrammar.Read(StatementGrammar.Write(read, english)));
        }

        Assert.Equal(Enum.GetValues<PlaceKind>().Order(), StatementTable.Rows.Where(r => r.Place is not null).Select(r => r.Place!.Value).Distinct().Order());
    }

    [Fact]
    public void Quantities_are_printed_and_read_in_both_Englishes() => RandomFigures.Quantity.Sample(
        q => Enum.GetValues<English>().All(e => q.Equals(QuantityGrammar.Read(QuantityGrammar.Write(q, e)))), iter: Samples);

    [Fact]
    public void Values_are_printed_and_read() => RandomFigures.Value.Sample(
        v => ValueReader.TryRead(FormulaText.Write(v, English.UnitedKingdom), out GivenValue? read, out _) && read.Is.Equals(v), iter: Samples);
}
