namespace Explain;

/// <summary>Counts the work of one search and stops it: at its limit, or when the caller no longer wants the result.</summary>
/// <param name="most">The most uses of rules.</param>
/// <param name="cancel">Says that the result is no longer wanted.</param>
internal sealed class Work(long most, CancellationToken cancel)
{
    private long done;

    /// <summary>Counts one use of a rule.</summary>
    /// <exception cref="TooMuchWorkException">The limit is reached.</exception>
    /// <exception cref="OperationCanceledException">The result is no longer wanted.</exception>
    public void UseRule()
    {
        GoOn();
        if (++done > most) throw new TooMuchWorkException();
    }

    /// <summary>Stops where the result is no longer wanted.</summary>
    /// <exception cref="OperationCanceledException">The result is no longer wanted.</exception>
    public void GoOn() => cancel.ThrowIfCancellationRequested();
}
