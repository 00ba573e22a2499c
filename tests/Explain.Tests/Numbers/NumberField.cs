using Fractions;

namespace Explain.Tests.Numbers;

/// <summary>
/// The independent computation: numbers of the field of √2, √3, √5 and √7 as sixteen rational coordinates. Coordinate i belongs to the
/// root of the product of the primes whose bits are set in i. Division solves sixteen linear equations.
/// </summary>
internal sealed class NumberField
{
    public const int Size = 16;

    private static readonly int[] Primes = [2, 3, 5, 7];

    private readonly Fraction[] coordinates;

    public NumberField(Fraction[] coordinates) => this.coordinates = coordinates;

    public Fraction this[int index] => coordinates[index];

    public bool IsZero => coordinates.All(c => c.IsZero);

    public static int Radicand(int index) => Primes.Where((_, bit) => (index >> bit & 1) == 1).Aggregate(1, (a, b) => a * b);

    public static NumberField operator +(NumberField a, NumberField b) => new([.. a.coordinates.Zip(b.coordinates, (x, y) => x + y)]);

    public static NumberField operator -(NumberField a, NumberField b) => new([.. a.coordinates.Zip(b.coordinates, (x, y) => x - y)]);

    public static NumberField operator *(NumberField a, NumberField b)
    {
        Fraction[] product = new Fraction[Size];
        for (int i = 0; i < Size; i++)
            for (int j = 0; j < Size; j++)
                product[i ^ j] += a[i] * b[j] * Radicand(i & j);
        return new(product);
    }

    public static NumberField operator /(NumberField a, NumberField b)
    {
        // Column j of the matrix is b times the root of index j; the right side is a.
        Fraction[][] rows = [.. Enumerable.Range(0, Size).Select(_ => new Fraction[Size + 1])];
        for (int j = 0; j < Size; j++)
            for (int i = 0; i < Size; i++)
                rows[i ^ j][j] += b[i] * Radicand(i & j);
        for (int i = 0; i < Size; i++) rows[i][Size] = a[i];
        Eliminate(rows);
        return new([.. rows.Select(r => r[Size])]);
    }

    public bool Equals(Exact exact)
    {
        if (exact.IsNested) return false;
        Fraction[] read = new Fraction[Size];
        foreach (SurdTerm term in exact.Front.Terms)
        {
            int index = Enumerable.Range(0, Size).Single(i => Radicand(i) == term.Radicand);
            Assert.Equal(0, term.PiPower);
            read[index] += term.Coefficient;
        }

        return read.SequenceEqual(coordinates);
    }

    private static void Eliminate(Fraction[][] rows)
    {
        for (int pivot = 0; pivot < Size; pivot++)
        {
            int found = Enumerable.Range(pivot, Size - pivot).First(r => !rows[r][pivot].IsZero);
            (rows[pivot], rows[found]) = (rows[found], rows[pivot]);
            Fraction scale = rows[pivot][pivot].Reciprocal();
            rows[pivot] = [.. rows[pivot].Select(x => x * scale)];
            for (int r = 0; r < Size; r++)
                if (r != pivot && rows[r][pivot] is { IsZero: false } factor)
                    rows[r] = [.. rows[r].Zip(rows[pivot], (x, y) => x - factor * y)];
        }
    }
}
