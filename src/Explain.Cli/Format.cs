namespace Explain.Cli;

/// <summary>The notations that the command prints: those of documents, and JSON for answers.</summary>
internal enum Format
{
    Markdown,
    Latex,
    Json,
}
