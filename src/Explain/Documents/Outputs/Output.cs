namespace Explain;

/// <summary>The notations in which a document is written.</summary>
public enum Output
{
    /// <summary>Markdown with TeX between dollar signs.</summary>
    Markdown,

    /// <summary>A LaTeX fragment that needs amsmath and amssymb.</summary>
    Latex,
}
