using System.Runtime.CompilerServices;

namespace Explain.Cli.Tests;

/// <summary>The demo files of docs/problems, and files of a test's own.</summary>
internal static class Demo
{
    public const string Mast = "mast.yaml";

    public const string FlatTriangle = """
        topic: solve a triangle
        figure: ABC is a triangle
        given:
          AB: 9 cm
          BC: 4 cm
          CA: 5 cm
        find: angles of ABC
        """;

    public static string Folder { get; } = Find();

    public static string Path(string name) => System.IO.Path.Combine(Folder, name);

    private static string Find([CallerFilePath] string here = "") =>
        System.IO.Path.GetFullPath(System.IO.Path.Combine(System.IO.Path.GetDirectoryName(here)!, "../../docs/problems"));
}
