namespace Explain.Cli;

/// <summary>What <c>solve</c> was asked to do.</summary>
/// <param name="Files">The problem files; - is standard input.</param>
/// <param name="Form">What is printed.</param>
/// <param name="Format">The notation.</param>
/// <param name="Page">How documents are worded.</param>
/// <param name="Into">The folder for the results; null for standard output.</param>
/// <param name="Debug">Whether a fault of the program is shown whole.</param>
internal sealed record SolveOptions(string[] Files, Form Form, Format Format, RendererOptions Page, string? Into, bool Debug);
