using System.Reflection;
using System.Runtime.CompilerServices;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace Explain.Tests.Architecture;

/// <summary>The library's sources, compiled with the generator that the build uses, so that generated files are bound too.</summary>
internal static class Library
{
    public static string Root { get; } = Find();

    public static IEnumerable<string> Files(string folder) => Directory.EnumerateFiles(Path.Combine(Root, folder), "*.cs", SearchOption.AllDirectories)
        .Where(f => !f.Contains("/obj/", StringComparison.Ordinal) && !f.Contains("/bin/", StringComparison.Ordinal)).Order(StringComparer.Ordinal);

    public static CSharpCompilation Compile(params (string Path, string Text)[] more)
    {
        CSharpParseOptions parse = new(LanguageVersion.Preview);
        SyntaxTree usings = CSharpSyntaxTree.ParseText(
            "global using System; global using System.Collections.Generic; global using System.IO; global using System.Linq; global using System.Threading; global using System.Threading.Tasks;", parse);
        IEnumerable<SyntaxTree> sources = Files("src/Explain").Select(f => (Path: Path.GetRelativePath(Root, f), Text: File.ReadAllText(f))).Concat(more)
            .Select(s => CSharpSyntaxTree.ParseText(s.Text, parse, s.Path));
        CSharpCompilation bare = CSharpCompilation.Create("Explain", [usings, .. sources], References(),
            new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary, nullableContextOptions: NullableContextOptions.Enable));
        GeneratorDriver driver = CSharpGeneratorDriver.Create([Generator()], parseOptions: parse);
        driver.RunGeneratorsAndUpdateCompilation(bare, out Compilation whole, out _);
        return (CSharpCompilation)whole;
    }

    private static IEnumerable<MetadataReference> References() =>
    [
        .. Basic.Reference.Assemblies.Net100.References.All,
        .. new[] { "Fractions", "MathNet.Numerics", "Scriban.Signed", "YamlDotNet" }.Select(n => Path.Combine(AppContext.BaseDirectory, n + ".dll"))
            .Where(File.Exists).Select(f => MetadataReference.CreateFromFile(f)),
    ];

    private static ISourceGenerator Generator()
    {
        string configuration = AppContext.BaseDirectory.Contains("/Release/", StringComparison.Ordinal) ? "Release" : "Debug";
        Assembly assembly = Assembly.LoadFrom(Path.Combine(Root, "src/Explain.Generators/bin", configuration, "netstandard2.0/Explain.Generators.dll"));
        return ((IIncrementalGenerator)Activator.CreateInstance(assembly.GetType("Explain.Generators.ExplainGenerator")!)!).AsSourceGenerator();
    }

    private static string Find([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "../../.."));
}
