using System.Collections.Immutable;
using System.Globalization;
using System.Reflection;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace Explain.Generators.Tests;

/// <summary>What a run of the generator gave.</summary>
internal sealed record Outcome(Sample From, CSharpCompilation Before, GeneratorRunResult Result)
{
    /// <summary>What the generator says, as <c>EXPL001 Test.cs(3) [underlined]: message</c>.</summary>
    public ImmutableArray<string> Findings => [.. Result.Diagnostics.Select(Write).Order(StringComparer.Ordinal)];

    public string Source(string file) => Result.GeneratedSources.Single(s => s.HintName == file).SourceText.ToString();

    /// <summary>Holds the run to these findings and no others; a failure prints what to paste.</summary>
    public Outcome Says(params string[] expected)
    {
        Assert.Null(Result.Exception);
        string paste = string.Join(",\n", Findings.Select(f => "\"" + f.Replace("\\", "\\\\").Replace("\"", "\\\"") + "\""));
        Assert.True(Findings.SequenceEqual(expected.Order(StringComparer.Ordinal)), "It says:\n" + paste);
        return this;
    }

    /// <summary>Holds the run to no findings and to code that compiles without a warning.</summary>
    public Outcome Compiles()
    {
        Says();
        Assert.True(Errors.IsEmpty, string.Join("\n", Errors) + "\n" + string.Join("\n", Result.GeneratedSources.Select(s => s.SourceText.ToString())));
        return this;
    }

    /// <summary>What the compiler finds; missing documentation only in what was generated.</summary>
    public ImmutableArray<Diagnostic> Errors => [.. After.GetDiagnostics().Where(d =>
        d.Severity >= DiagnosticSeverity.Warning && !(d.Id == "CS1591" && Before.SyntaxTrees.Any(t => t == d.Location.SourceTree)))];

    /// <summary>Loads the compiled project.</summary>
    public Assembly Load() => Assembly.Load(Image());

    /// <summary>The compiled project.</summary>
    public byte[] Image()
    {
        Compiles();
        using MemoryStream stream = new();
        CSharpCompilation calm = After.WithOptions(After.Options.WithGeneralDiagnosticOption(ReportDiagnostic.Default));
        Assert.Empty(calm.Emit(stream).Diagnostics.Where(d => d.Severity == DiagnosticSeverity.Error));
        return stream.ToArray();
    }

    private CSharpCompilation After => Before.AddSyntaxTrees(Result.GeneratedSources.Select(s => s.SyntaxTree));

    private string Write(Diagnostic diagnostic)
    {
        FileLinePositionSpan at = diagnostic.Location.GetLineSpan();
        string text = From.Sources.GetValueOrDefault(at.Path) ?? From.Wordings[at.Path];
        string marked = text.Substring(diagnostic.Location.SourceSpan.Start, diagnostic.Location.SourceSpan.Length);
        string start = marked.Length > 30 ? marked[..29] + "…" : marked;
        return string.Create(CultureInfo.InvariantCulture, $"{diagnostic.Id} {at.Path}({at.StartLinePosition.Line + 1}) [{start}]: {diagnostic.GetMessage(CultureInfo.InvariantCulture)}");
    }
}
