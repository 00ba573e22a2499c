namespace Explain;

/// <summary>Draws a problem by coordinates, from its givens alone and by none of the rules that solve it.</summary>
internal interface IIndependentModel
{
    /// <summary>Every figure that fits the givens, up to turning it over; null when the model cannot draw this kind of problem.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="bits">Binary places after the point that the coordinates keep.</param>
    Items<Layout>? Layouts(Problem problem, int bits);
}
