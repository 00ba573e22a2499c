using Microsoft.CodeAnalysis;

namespace Explain.Generators;

/// <summary>A diagnostic as a value: it travels through the stages and is reported at their end.</summary>
internal sealed record Finding(string Id, Place At, EquatableArray<string> Args)
{
    public static Finding Of(DiagnosticDescriptor descriptor, Place at, params string[] args) => new(descriptor.Id, at, [.. args]);

    public Diagnostic ToDiagnostic() => Diagnostic.Create(Descriptors.Find(Id), At.ToLocation(), [.. Args]);
}
