namespace Explain;

/// <summary>A side that is too short to close the triangle.</summary>
internal sealed class ReachFault(Problem problem, Ledger ledger)
{
    public ProblemError Of(SwingingSide swinging)
    {
        Culprits culprits = new(problem, ledger, swinging.Angle, swinging.Beside, swinging.Opposite);
        Symbol side = culprits.Spelled(swinging.Opposite), beside = culprits.Spelled(swinging.Beside);
        return swinging.IsAcute(ledger)
            ? Error(culprits, ErrorPhrases.DoesNotReach(culprits.Facts, swinging.Top, swinging.Line, Product(swinging), ledger.Evaluate(swinging.Height)!, side), AtLeast(side, ledger.Evaluate(swinging.Height)!))
            : Error(culprits, ErrorPhrases.NotTheLongest(culprits.Facts, side, beside), ErrorPhrases.LongerThan(side, ledger.Evaluate(beside)!));
    }

    private static ProblemError Error(Culprits culprits, Phrase message, Phrase remedy) => new(ErrorCodes.DoesNotReach, culprits.Lines, 0, message, remedy);

    /// <summary>2.5 × sin 38°.</summary>
    private Product Product(SwingingSide swinging) =>
        new(Digits.Of(ledger.Evaluate(swinging.Beside)! with { Unit = Unit.None }), new Apply(Function.Sine, Digits.Of(ledger.Evaluate(swinging.Angle)!)));

    /// <summary>The least length that reaches, rounded up where it does not end.</summary>
    private static Phrase AtLeast(Symbol side, Value height)
    {
        Rounding rule = Rounding.Default(height.Unit);
        Shown full = NumberText.Cut(height, NumberStyle.For(height.Unit));
        if (!full.Continues) return ErrorPhrases.AtLeast(side, height);
        Fractions.Fraction scale = Decimals.TenTo(NumberText.PlacesFor(height, rule));
        return ErrorPhrases.AtLeastRoundedUp(side, new Quantity(Exact.Of(new Fractions.Fraction(Decided.Ceiling(height, scale)) / scale), height.Unit));
    }
}
