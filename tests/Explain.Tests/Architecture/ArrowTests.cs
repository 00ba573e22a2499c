using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace Explain.Tests.Architecture;

public sealed class ArrowTests
{
    [Fact]
    public void Rooms_use_only_rooms_before_them()
    {
        CSharpCompilation library = Library.Compile();
        Assert.Empty(library.GetDiagnostics().Where(d => d.Severity == DiagnosticSeverity.Error));
        Assert.Contains(library.SyntaxTrees, t => t.FilePath.EndsWith(".Rules.g.cs", StringComparison.Ordinal));
        Assert.Empty(Rooms.Breaches(library));
    }

    private static readonly (string Room, string Member, string Breach)[] Plants =
    [
        ("Numbers", "public static Problem? Planted() => null", "Numbers uses Problems"),
        ("Reasoning", "public static object Planted(Solution s) => Topics.Standard", "Reasoning uses Topics"),
        ("Verifying", "public static object Planted(Ledger l) => l", "Verifying uses Reasoning"),
        ("Rules", "public static string Planted(object o) => o is Solution { Warnings: var w } ? w.ToString()! : string.Empty", "Rules uses Solutions"),
        ("Formulas", "[Phrase(\"planted.phrase\")] public static partial Phrase Planted()", "Formulas uses Statements"),
    ];

    [Fact]
    public void Planted_arrows_are_found()
    {
        CSharpCompilation library = Library.Compile([.. Plants.Select(p => ($"src/Explain/{p.Room}/PlantedIn{p.Room}.cs",
            $"namespace Explain; internal static partial class PlantedIn{p.Room} {{ {p.Member}; }}"))]);
        string[] breaches = [.. Rooms.Breaches(library, only: "PlantedIn")];
        Assert.All(Plants, p => Assert.Contains(breaches, b => b.StartsWith(p.Breach, StringComparison.Ordinal) && b.Contains("PlantedIn" + p.Room, StringComparison.Ordinal)));
    }

    [Fact]
    public void Every_folder_is_a_room_of_the_order() => Assert.All(
        Library.Files("src/Explain").Select(f => Path.GetRelativePath(Path.Combine(Library.Root, "src/Explain"), f).Split('/')[0]).Distinct(),
        room => Assert.True(Rooms.LevelOf(room) >= 0, room));
}
