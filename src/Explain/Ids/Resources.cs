namespace Explain;

/// <summary>Reads the files that the library carries: wordings, templates, problem files to begin with.</summary>
internal static class Resources
{
    public static IEnumerable<string> Names(string folder) => typeof(Resources).Assembly.GetManifestResourceNames()
        .Where(n => n.StartsWith(folder, StringComparison.Ordinal)).Order(StringComparer.Ordinal);

    public static string Read(string name)
    {
        using Stream stream = typeof(Resources).Assembly.GetManifestResourceStream(name) ?? throw new ArgumentException(name, nameof(name));
        using StreamReader reader = new(stream);
        return reader.ReadToEnd();
    }
}
