namespace Explain.Generators;

/// <summary>A wording file as the compiler hands it over: the English is the first part of its name.</summary>
internal sealed record WordingText(string Path, string Text)
{
    public string Name => System.IO.Path.GetFileName(Path);

    public string English => Name.Split('.')[0];
}
