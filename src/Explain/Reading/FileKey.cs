namespace Explain;

/// <summary>A key of a problem file: one row of the table of keys.</summary>
/// <param name="Name">The key.</param>
/// <param name="Shape">What may stand under it.</param>
/// <param name="Example">How it is written.</param>
/// <param name="Read">Adds what stands under it to a problem.</param>
internal sealed record FileKey(string Name, FileShape Shape, string Example, Func<Problem, FileEntry, Problem> Read);
