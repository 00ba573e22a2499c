using System.Numerics;
using Fractions;

namespace Explain;

/// <summary>One term of a surd sum: coefficient × √radicand × π^power, the radicand squarefree and positive.</summary>
internal readonly record struct SurdTerm(Fraction Coefficient, BigInteger Radicand, int PiPower)
{
    public bool IsRational => Radicand.IsOne && PiPower == 0;

    public static SurdTerm operator *(SurdTerm first, SurdTerm second)
    {
        var common = BigInteger.GreatestCommonDivisor(first.Radicand, second.Radicand);
        return new(
            first.Coefficient * second.Coefficient * common,
            first.Radicand / common * (second.Radicand / common),
            first.PiPower + second.PiPower);
    }
}
