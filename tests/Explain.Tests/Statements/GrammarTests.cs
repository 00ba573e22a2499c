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

    /// <summary>The table drives the test: each row, in each way of typing it, in both Englishes.</summary>
    [Fact]
    public void Every_way_of_typing_each_row_is_read_as_that_row()
    {
        int read = 0;
        foreach (StatementRow row in StatementTable.Rows)
            Typed(row.Row, f => row.Make(f.Of)!, StatementGrammar.Read, ref read);
        foreach (QuantityRow row in QuantityTable.Rows)
            Typed(row.Row, f => row.Make(f.Of), QuantityGrammar.Read, ref read);
        foreach (GoalRow row in GoalTable.Rows)
            Typed(row.Row, f => row.Make(f.Of), text => GoalReader.Read(text, out _) is { } goal ? goal with { AsTyped = "" } : null, ref read);
        Assert.InRange(read, 1000, int.MaxValue);
    }

    /// <summary>Bounds, methods, proofs: what is found of any quantity, and proved of any statement.</summary>
    [Theory]
    [InlineData(English.UnitedKingdom)]
    [InlineData(English.UnitedStates)]
    public void What_is_found_of_a_quantity_is_read_for_every_quantity(English english) => Gen.Select(RandomFigures.Quantity, RandomFigures.Any, Gen.Int[0, MethodNames.All.Count() - 1]).Sample(
        (q, s, m) =>
        {
            string quantity = QuantityGrammar.Write(q, english), method = MethodNames.All.ElementAt(m);
            Goal Read(string text) => GoalReader.Read(text, out _) ?? throw new InvalidOperationException(text);
            Goal bounds = Read("bounds of " + quantity), by = Read($"{quantity} by {method}"), drawn = Read("scale drawing of " + quantity), value = Read(quantity), prove = Read("prove " + StatementGrammar.Write(s, english));
            return (bounds.Kind, by.Kind, drawn.Kind, value.Kind, prove.Kind) == (GoalKind.Bounds, GoalKind.ByMethod, GoalKind.ByMethod, GoalKind.Value, GoalKind.Proof)
                && new[] { bounds, by, drawn, value }.All(g => q.Equals(g.Wanted)) && (by.Method, drawn.Method) == (method, "scale drawing") && s.Equals(prove.Statement);
        },
        iter: 1000);

    [Fact]
    public void Quantities_are_printed_and_read_in_both_Englishes() => RandomFigures.Quantity.Sample(
        q => Enum.GetValues<English>().All(e => q.Equals(QuantityGrammar.Read(QuantityGrammar.Write(q, e)))), iter: Samples);

    [Fact]
    public void Values_are_printed_and_read() => RandomFigures.Value.Sample(
        v => ValueReader.TryRead(FormulaText.Write(v, English.UnitedKingdom), out GivenValue? read, out _) && read.Is.Equals(v), iter: Samples);

    private static void Typed<T>(GrammarRow row, Func<FilledRow, T> make, Func<string, T?> reader, ref int read) where T : class
    {
        int done = 0;
        RandomFigures.Filled(row).Sample(
            filled =>
            {
                T expected = make(filled);
                foreach (English english in Enum.GetValues<English>())
                    foreach (string text in filled.Typed(english))
                    {
                        Assert.True(expected.Equals(reader(text)), text);
                        Interlocked.Increment(ref done);
                    }
            },
            iter: 2);
        read += done;
    }
}
