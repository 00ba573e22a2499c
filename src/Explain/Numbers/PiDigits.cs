using System.Numerics;

namespace Explain;

/// <summary>π in binary, rounded down, by Machin's formula π = 16 arctan 1/5 − 4 arctan 1/239.</summary>
internal static class PiDigits
{
    private const int StoredBits = 2048;

    private static readonly BigInteger Stored = Compute(StoredBits);

    /// <summary>The greatest whole number at most π × 2^bits.</summary>
    public static BigInteger Floor(int bits) =>
        bits <= StoredBits ? Stored >> (StoredBits - bits) : Compute(bits);

    // 64 more bits than asked: π would need a run of about 50 equal binary digits there for the floor to be wrong, so the run is looked for.
    private static BigInteger Compute(int bits)
    {
        for (var guard = 64; ; guard *= 2)
        {
            var work = bits + guard;
            var slack = new BigInteger(work) << 6;
            var value = 16 * ArctangentOfInverse(5, work) - 4 * ArctangentOfInverse(239, work);
            var low = (value - slack) >> guard;
            if (low == (value + slack) >> guard)
            {
                return low;
            }
        }
    }

    private static BigInteger ArctangentOfInverse(int inverse, int bits)
    {
        var power = (BigInteger.One << bits) / inverse;
        var sum = power;
        for (var odd = 3; !power.IsZero; odd += 2)
        {
            power = -power / (inverse * inverse);
            sum += power / odd;
        }

        return sum;
    }
}
