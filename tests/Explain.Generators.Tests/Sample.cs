using System.Collections.Immutable;
using Basic.Reference.Assemblies;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.Diagnostics;

namespace Explain.Generators.Tests;

/// <summary>A small project to generate for: source files, wording files, and whether the wording files are whole.</summary>
internal sealed record Sample
{
    private static readonly ImmutableArray<MetadataReference> References =
    [
        .. Net100.References.All,
        MetadataReference.CreateFromFile(typeof(Rule).Assembly.Location),
        MetadataReference.CreateFromFile(typeof(Fractions.Fraction).Assembly.Location),
    ];

    private static readonly CSharpParseOptions Parse = new(LanguageVersion.CSharp14, DocumentationMode.Diagnose);

    public ImmutableSortedDictionary<string, string> Sources { get; init; } = ImmutableSortedDictionary<string, string>.Empty;

    public ImmutableSortedDictionary<string, string> Wordings { get; init; } = ImmutableSortedDictionary<string, string>.Empty;

    /// <summary>Another project, which this one uses.</summary>
    public Sample? Uses { get; init; }

    /// <summary>The name of the assembly.</summary>
    public string Name { get; init; } = "Sample";

    public bool Whole { get; init; } = true;

    public NullableContextOptions Nullable { get; init; } = NullableContextOptions.Enable;

    public static Sample Of(string source) => new() { Sources = ImmutableSortedDictionary<string, string>.Empty.Add("Test.cs", source) };

    public Sample With(string file, string text) => file.EndsWith(".cs", StringComparison.Ordinal)
        ? this with { Sources = Sources.SetItem(file, text) } : this with { Wordings = Wordings.SetItem(file, text) };

    /// <summary>The project in which a piece of one file's text is exchanged.</summary>
    public Sample Edit(string file, string from, string to)
    {
        string text = file.EndsWith(".cs", StringComparison.Ordinal) ? Sources[file] : Wordings[file];
        Assert.Contains(from, text, StringComparison.Ordinal);
        return With(file, text.Replace(from, to, StringComparison.Ordinal));
    }

    public CSharpCompilation Compile() => CSharpCompilation.Create(Name,
        Sources.Select(s => CSharpSyntaxTree.ParseText(s.Value, Parse, s.Key)),
        Uses is null ? References : References.Add(MetadataReference.CreateFromImage(Uses.Run().Image())),
        new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary, nullableContextOptions: Nullable, generalDiagnosticOption: ReportDiagnostic.Error,
            specificDiagnosticOptions: [new("CS1701", ReportDiagnostic.Suppress)]));

    /// <summary>Runs the generator, twice: nothing may be calculated again, and nothing kept that holds a compilation alive.</summary>
    public Outcome Run()
    {
        CSharpCompilation compilation = Compile();
        GeneratorDriver driver = Driver().RunGenerators(compilation);
        Outcome first = new(this, compilation, driver.GetRunResult().Results.Single());
        Outcome again = new(this, compilation, driver.RunGenerators(compilation.Clone()).GetRunResult().Results.Single());
        Caching.Check(first.Result);
        Caching.CheckUnchanged(again.Result);
        return first;
    }

    /// <summary>Runs the generator, then again after an edit, and gives the second run.</summary>
    public GeneratorRunResult RunAfter(Func<Sample, Sample> edit)
    {
        Sample after = edit(this);
        GeneratorDriver driver = Driver().RunGenerators(Compile());
        driver = driver.ReplaceAdditionalTexts(after.Texts());
        CSharpCompilation changed = Compile();
        foreach (SyntaxTree tree in changed.SyntaxTrees.Where(t => after.Sources[t.FilePath] != Sources[t.FilePath]))
            changed = changed.ReplaceSyntaxTree(tree, CSharpSyntaxTree.ParseText(after.Sources[tree.FilePath], Parse, tree.FilePath));
        return driver.RunGenerators(changed).GetRunResult().Results.Single();
    }

    private CSharpGeneratorDriver Driver() => CSharpGeneratorDriver.Create([new ExplainGenerator().AsSourceGenerator()], Texts(), Parse,
        new SampleOptions(Whole), new GeneratorDriverOptions(IncrementalGeneratorOutputKind.None, trackIncrementalGeneratorSteps: true));

    private ImmutableArray<AdditionalText> Texts() => [.. Wordings.Select(w => new SampleText(w.Key, w.Value))];
}
