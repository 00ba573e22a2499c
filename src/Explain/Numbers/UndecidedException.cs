namespace Explain;

/// <summary>A digit cannot be proved, so nothing is printed.</summary>
public sealed class UndecidedException : Exception
{
    /// <summary>A digit cannot be proved.</summary>
    public UndecidedException()
        : base(nameof(UndecidedException))
    {
    }
}
