namespace Explain.Generators;

/// <summary>What was read at one declaration: its model, where it stands, and what is wrong with it.</summary>
/// <remarks>The model holds no place, so it stays the same when lines are added above it.</remarks>
internal sealed record Reading<T>(T? Model, Place At, EquatableArray<Finding> Findings)
    where T : class, IEquatable<T>;
