namespace Explain;

/// <summary>A template of a house cannot be used. The library's own templates are tested.</summary>
public sealed class TemplateException(string template, string why, Exception? inner) : Exception(template + ": " + why, inner)
{
    /// <summary>The template's name.</summary>
    public string Template { get; } = template;
}
