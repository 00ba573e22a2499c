using System.Collections;
using System.Reflection;
using Microsoft.CodeAnalysis;

namespace Explain.Generators.Tests;

/// <summary>What holds of every run: repeated work is recognised, and results keep no compilation alive.</summary>
internal static class Caching
{
    private static readonly string[] Stages = [.. typeof(StageNames).GetFields().Select(f => (string)f.GetValue(null)!)];

    public static void Check(GeneratorRunResult result)
    {
        HashSet<object> seen = new(ReferenceEqualityComparer.Instance);
        foreach ((object output, string stage) in Outputs(result)) Walk(output, stage, seen);
    }

    public static void CheckUnchanged(GeneratorRunResult result)
    {
        foreach (string stage in Stages)
            Assert.All(Reasons(result, stage), reason => Assert.True(reason is IncrementalStepRunReason.Cached or IncrementalStepRunReason.Unchanged, $"{stage}: {reason}"));
        Assert.All(OutputReasons(result), reason => Assert.Equal(IncrementalStepRunReason.Cached, reason));
    }

    public static IncrementalStepRunReason[] Reasons(GeneratorRunResult result, string stage) =>
        [.. Steps(result, stage).SelectMany(s => s.Outputs).Select(o => o.Reason)];

    public static IncrementalStepRunReason[] OutputReasons(GeneratorRunResult result) =>
        [.. result.TrackedOutputSteps.SelectMany(s => s.Value).SelectMany(s => s.Outputs).Select(o => o.Reason)];

    private static IEnumerable<IncrementalGeneratorRunStep> Steps(GeneratorRunResult result, string stage) =>
        result.TrackedSteps.TryGetValue(stage, out var steps) ? steps : [];

    private static IEnumerable<(object Output, string Stage)> Outputs(GeneratorRunResult result) =>
        Stages.SelectMany(stage => Steps(result, stage).SelectMany(s => s.Outputs).Select(o => (o.Value, stage)));

    private static void Walk(object? node, string stage, HashSet<object> seen)
    {
        if (node is null || node is string || node.GetType().IsPrimitive || node.GetType().IsEnum || !seen.Add(node)) return;
        Assert.False(node is Compilation or ISymbol or SyntaxNode or SyntaxTree or Location or SemanticModel, $"{stage} holds a {node.GetType().Name}");
        if (node is IEnumerable items) foreach (object? item in items) Walk(item, stage, seen);
        for (Type? type = node.GetType(); type is not null; type = type.BaseType)
            foreach (FieldInfo field in type.GetFields(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly))
                Walk(field.GetValue(node), stage, seen);
    }
}
