namespace Explain;

/// <summary>What phrases and formulas refer to: claims, their values and the numbers of their steps.</summary>
internal interface IClaims
{
    /// <summary>The claim; null where it is not known.</summary>
    Claimed? Find(ClaimId id);

    /// <summary>The quantity whose value a claim gives; null where it gives none.</summary>
    Symbol? QuantityOf(ClaimId id) => Find(id) switch
    {
        Calculation calculation => calculation.Target,
        { Says: Compare { Terms: [SymbolUse use, ..] } } => use.Symbol,
        _ => null,
    };

    /// <summary>What stands for the value of a claim: a value, or a formula where letters are still unknown; null where it has none.</summary>
    ClaimValue? ValueOf(ClaimId id);

    /// <summary>The number under which a page shows it; null where the page shows none.</summary>
    string? NumberOf(ClaimId id);

    /// <summary>The value of a formula from the givens; null where it has none.</summary>
    Value? Evaluate(Expr expr);
}
