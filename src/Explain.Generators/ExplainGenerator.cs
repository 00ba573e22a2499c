using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Explain.Generators;

/// <summary>Writes while compiling what can be derived from a declaration: phrases, rules, explained twins; and checks the wording files.</summary>
[Generator(LanguageNames.CSharp)]
public sealed class ExplainGenerator : IIncrementalGenerator
{
    /// <inheritdoc/>
    public void Initialize(IncrementalGeneratorInitializationContext context)
    {
        IncrementalValuesProvider<Reading<PhraseModel>> phrases = context.SyntaxProvider.ForAttributeWithMetadataName(
            "Explain.PhraseAttribute", static (node, _) => node is MethodDeclarationSyntax, PhraseReader.Read).WithTrackingName(StageNames.PhraseReadings);
        IncrementalValuesProvider<Reading<RuleModel>> rules = context.SyntaxProvider.ForAttributeWithMetadataName(
                "Explain.RuleAttribute", static (node, _) => node is MethodDeclarationSyntax or TypeDeclarationSyntax, RuleReader.Read)
            .SelectMany(static (readings, _) => readings).WithTrackingName(StageNames.RuleReadings);

        IncrementalValuesProvider<ExplainedReading> methods = context.SyntaxProvider.ForAttributeWithMetadataName(
            "Explain.ExplainedAttribute", static (node, _) => node is MethodDeclarationSyntax, ExplainedReader.Read).WithTrackingName(StageNames.MethodReadings);
        IncrementalValuesProvider<Reading<ExplainedModel>> explained = methods.Select(static (m, _) => m.Of);
        IncrementalValuesProvider<WordingText> files = context.AdditionalTextsProvider
            .Where(static text => text.Path.EndsWith(".wording.yaml", StringComparison.Ordinal))
            .Select(static (text, cancel) => new WordingText(text.Path, text.GetText(cancel)?.ToString() ?? ""))
            .WithTrackingName(StageNames.WordingTexts);

        Emit(context, phrases, static p => p.In, ".Phrases.g.cs", PhraseEmitter.Emit, StageNames.Phrases);
        Emit(context, rules, static r => r.In, ".Rules.g.cs", RuleEmitter.Emit, StageNames.Rules);
        Emit(context, explained, static m => m.In, ".Explained.g.cs", ExplainedEmitter.Emit, StageNames.Methods);
        Report(context, phrases);
        Report(context, rules);
        Report(context, explained);
        CheckWordings(context, phrases, rules, files);
        CheckMethods(context, methods, rules, files);
    }

    private static void Emit<T>(IncrementalGeneratorInitializationContext context, IncrementalValuesProvider<Reading<T>> readings,
        Func<T, TypeModel> type, string ending, Func<Group<T>, string> emit, string stage)
        where T : class, IEquatable<T>
    {
        IncrementalValuesProvider<Group<T>> groups = readings
            .Where(static r => r.Model is not null)
            .Collect()
            .SelectMany((all, _) => Group<T>.By(all.OrderBy(r => r.At.Path, StringComparer.Ordinal).Select(r => r.Model!), type))
            .WithTrackingName(stage);
        context.RegisterSourceOutput(groups, (output, group) => output.AddSource(group.In.FileName + ending, emit(group)));
    }

    private static void Report<T>(IncrementalGeneratorInitializationContext context, IncrementalValuesProvider<Reading<T>> readings)
        where T : class, IEquatable<T> => Report(context, readings.SelectMany(static (r, _) => r.Findings).WithTrackingName(StageNames.Findings));

    private static void Report(IncrementalGeneratorInitializationContext context, IncrementalValuesProvider<Finding> findings) =>
        context.RegisterSourceOutput(findings, static (output, finding) => output.ReportDiagnostic(finding.ToDiagnostic()));

    private static void CheckWordings(IncrementalGeneratorInitializationContext context,
        IncrementalValuesProvider<Reading<PhraseModel>> phrases, IncrementalValuesProvider<Reading<RuleModel>> rules, IncrementalValuesProvider<WordingText> files)
    {
        IncrementalValueProvider<bool> whole = context.AnalyzerConfigOptionsProvider
            .Select(static (options, _) => options.GlobalOptions.TryGetValue("build_property.ExplainWording", out string? value) && value == "whole");
        IncrementalValuesProvider<Wanted> wantedPhrases = phrases.Where(static p => p.Model is not null).Select(static (p, _) => Wanted.Of(p.Model!, p.At));
        IncrementalValuesProvider<Wanted> wantedRules = rules.Where(static r => r.Model is not null).SelectMany(static (r, _) => Wanted.Of(r.Model!, r.At));
        Report(context, wantedPhrases.Collect().Combine(wantedRules.Collect()).Combine(files.Collect()).Combine(whole)
            .SelectMany(static (all, _) => new WordingChecks([.. all.Left.Left.Left, .. all.Left.Left.Right], all.Left.Right, all.Right).Run())
            .WithTrackingName(StageNames.WordingFindings));
    }

    private static void CheckMethods(IncrementalGeneratorInitializationContext context,
        IncrementalValuesProvider<ExplainedReading> methods, IncrementalValuesProvider<Reading<RuleModel>> rules, IncrementalValuesProvider<WordingText> files)
    {
        Report(context, methods.Select(static (m, _) => m.Of).Collect().SelectMany(static (all, _) => Circles.Find(all)).WithTrackingName(StageNames.Circles));
        IncrementalValuesProvider<Mention> mentions = methods.SelectMany(static (m, _) => m.Mentions);
        IncrementalValuesProvider<RuleModel> declared = rules.Where(static r => r.Model is not null).Select(static (r, _) => r.Model!);
        Report(context, mentions.Collect().Combine(declared.Collect()).Combine(files.Collect())
            .SelectMany(static (all, _) => MentionChecks.Run(all.Left.Left, all.Left.Right, all.Right)).WithTrackingName(StageNames.Mentions));
    }
}
