using Fractions;

namespace Explain;

/// <summary>What a term of a cosine sum is a rational multiple of: the cosine of an angle × a power of π × some of the roots of a root table.</summary>
/// <param name="Angle">Degrees, 0 or more, less than 90, not 60.</param>
/// <param name="PiPower">The power of π.</param>
/// <param name="Roots">Bit i is set where root i is a factor.</param>
internal readonly record struct CosineTerm(Fraction Angle, int PiPower, int Roots)
{
    public static CosineTerm One { get; } = new(Fraction.Zero, 0, 0);
}
