namespace Explain;

#pragma warning disable
public sealed class Exact { public static Exact Of(Fractions.Fraction f) => new(); public static Exact Of(long f) => new(); public static Exact Pi => new(); }
public readonly struct Enclosure { }
public sealed record Unit(string Symbol) { public static readonly Unit None = new(""); public static readonly Unit Degree = new("°"); public static readonly Unit Metre = new("m"); }
public sealed record Value(Exact? Exact, Enclosure True, Unit Unit);
public sealed record Rounding();
