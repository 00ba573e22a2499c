namespace Explain;

/// <summary>What a term of a cosine sum is a multiple of: the cosine of an angle × a power of π × some of the roots of a cosine table.</summary>
/// <param name="Angle">In steps of the table.</param>
/// <param name="PiPower">The power of π.</param>
/// <param name="Roots">Bit i is set where root i is a factor.</param>
internal readonly record struct CosineTerm(int Angle, int PiPower, int Roots)
{
    public static CosineTerm One { get; } = new(0, 0, 0);
}
