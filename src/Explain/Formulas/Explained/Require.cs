using System.Runtime.CompilerServices;

namespace Explain;

/// <summary>States what an explained method needs. It prints as a condition of the formula.</summary>
public static class Require
{
    /// <summary>Does nothing when the condition holds.</summary>
    /// <param name="holds">The condition.</param>
    /// <param name="condition">Its text; the compiler fills it in.</param>
    /// <exception cref="ArgumentException">It does not hold; the message is its text.</exception>
    public static void That(bool holds, [CallerArgumentExpression(nameof(holds))] string condition = "")
    {
        if (!holds) throw new ArgumentException(condition);
    }
}
