using Microsoft.CodeAnalysis.CSharp;

namespace Explain.Generators;

/// <summary>The comparisons of C#, and the relations that they are.</summary>
internal static class ConditionSigns
{
    public static string? Relation(SyntaxKind kind) => kind switch
    {
        SyntaxKind.LessThanExpression => "Less",
        SyntaxKind.LessThanOrEqualExpression => "LessOrEqual",
        SyntaxKind.GreaterThanExpression => "Greater",
        SyntaxKind.GreaterThanOrEqualExpression => "GreaterOrEqual",
        SyntaxKind.EqualsExpression => "Equal",
        SyntaxKind.NotEqualsExpression => "Different",
        _ => null,
    };
}
