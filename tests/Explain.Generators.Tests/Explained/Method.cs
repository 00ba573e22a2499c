using System.Reflection;

namespace Explain.Generators.Tests.Explained;

/// <summary>Samples that hold explained methods.</summary>
internal static class Method
{
    /// <summary>A class with members as given; the first stands on line 5.</summary>
    public static Sample In(string members) => Sample.Of($$"""
        using System;
        using Explain;
        using static Explain.DegreeTrigonometry;
        public static partial class T {
        {{members}}
        }
        """);

    /// <summary>A method of two lengths a and b and an angle C that gives a length; its body begins on line 7.</summary>
    public static Sample Body(string body) => In($$"""
        [Explained] [return: Symbol("x"), Unit("m")]
        public static double F([Unit("m")] double a, [Unit("m")] double b, [Unit("°")] double C, int n) {
        {{body}}
        }
        """);

    /// <summary>The formula that a method became.</summary>
    public static ExplainedFormula Formula(this Sample sample, string name = "F", string type = "T") =>
        (ExplainedFormula)sample.Run().Load().GetType(type + "+Formulas")!.GetProperty(name, BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic)!.GetValue(null)!;

    public static string? Reason(ExplainedLine line) => (line.Reason as WrittenReason)?.Text;
}
