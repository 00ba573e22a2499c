namespace Explain;

/// <summary>A search has reached its limit. It never leaves the solver, which refuses the problem.</summary>
internal sealed class TooMuchWorkException : Exception;
