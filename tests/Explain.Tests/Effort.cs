namespace Explain.Tests;

/// <summary>How many cases the heavy tests draw: a part by default, more with <c>EXPLAIN_EFFORT=many</c> (what continuous integration has time for), every one with <c>EXPLAIN_EFFORT=all</c>.</summary>
internal static class Effort
{
    private static readonly string? Asked = Environment.GetEnvironmentVariable("EXPLAIN_EFFORT");

    internal static int Of(int some, int many, int all) => Asked switch { "all" => all, "many" => many, _ => some };

    internal static int Of(int some, int many) => Of(some, many, many);
}
