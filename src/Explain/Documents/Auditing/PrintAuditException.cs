namespace Explain;

/// <summary>
/// A page would hold something that is not in its solution: a number, a name of the figure, a reason or a text. Nothing is printed. Where no
/// template of a house is the cause, it is a fault of the library: please report it.
/// </summary>
public sealed class PrintAuditException : Exception
{
    /// <summary>Says what was found.</summary>
    /// <param name="findings">What was found, one or more.</param>
    public PrintAuditException(Items<Finding> findings)
        : base(string.Join("; ", findings.Select(f => $"{f.Test}{(f.Claim is { } claim ? " " + claim.Name : "")}: {f.Detail}"))) => Findings = findings;

    /// <summary>What was found; the test of each is <c>V8</c>, its claim the step that the place prints, where it prints one.</summary>
    public Items<Finding> Findings { get; }
}
