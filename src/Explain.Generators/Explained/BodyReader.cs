using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Explain.Generators;

/// <summary>Reads the statements of an explained method, once. Locals that are wished to have a unit get it, though made of plain numbers.</summary>
internal sealed class BodyReader
{
    private const string Allowed = "allowed are local values, Require.That, if … return, and return; move the rest to where the method is called";

    private readonly SemanticModel model;
    private readonly IMethodSymbol method;
    private readonly Signature signature;
    private readonly Dictionary<string, UnitModel> wishes;
    private readonly Dictionary<ISymbol, LetterNode> letters = new(SymbolEqualityComparer.Default);
    private readonly HashSet<string> symbols;
    private readonly NodeReader nodes;
    private readonly ReasonReader reasons;
    private List<LineModel> lines = [];
    private bool isQuiet;

    public BodyReader(SemanticModel model, IMethodSymbol method, Signature signature, Dictionary<string, UnitModel> wishes)
    {
        (this.model, this.method, this.signature, this.wishes) = (model, method, signature, wishes);
        foreach ((ParameterModel parameter, IParameterSymbol symbol) in signature.Parameters.Zip(method.Parameters, (p, s) => (p, s))) letters.Add(symbol, parameter.Symbol);
        symbols = [.. letters.Values.Select(l => l.Name), signature.Result.Name];
        nodes = new(model, Findings, s => letters.TryGetValue(s, out LetterNode? letter) ? letter : null, Call) { Wishes = wishes };
        reasons = new(symbols, Findings, Mentions);
    }

    public List<Finding> Findings { get; } = [];

    public List<Mention> Mentions { get; } = [];

    public List<string> Calls { get; } = [];

    public IReadOnlyList<LineModel> Lines => lines;

    public void Read(MethodDeclarationSyntax syntax)
    {
        if (syntax.ExpressionBody is { } arrow) Choose(arrow.Expression, Spot.Of(arrow), Result);
        else if (syntax.Body is { } body) Block(body.Statements);
        else Fault(Descriptors.BadSignature, syntax.Identifier, method.Name, "it has no body");
        foreach (string unused in Unused.In(lines))
            if (letters.FirstOrDefault(l => l.Value.Name == unused).Key is { } local) Findings.Add(Finding.Of(Descriptors.Unused, Place.Of(local.Locations[0]), unused));
    }

    /// <summary>Reads statements up to a result; whether there was one.</summary>
    private bool Block(IEnumerable<StatementSyntax> statements)
    {
        foreach (StatementSyntax statement in statements)
        {
            if (Statement(statement)) return true;
        }

        return false;
    }

    private bool Statement(StatementSyntax statement)
    {
        switch (statement)
        {
            case LocalDeclarationStatementSyntax { UsingKeyword.RawKind: 0 } local:
                foreach (VariableDeclaratorSyntax variable in local.Declaration.Variables) Local(variable);
                return false;
            case ExpressionStatementSyntax { Expression: InvocationExpressionSyntax call } when IsRequire(call):
                ExpressionSyntax required = call.ArgumentList.Arguments[0].Expression;
                if (Conditions(required) is { } holds) lines.Add(new RequireLine(holds, ConditionReason(required, Spot.Of(statement))));
                return false;
            case IfStatementSyntax choice:
                return If(choice);
            case ReturnStatementSyntax { Expression: { } value }:
                Choose(value, Spot.Of(statement), Result);
                return true;
            default:
                Fault(Descriptors.BadStatement, statement, statement.ToString().Split('\n')[0].Trim(), Allowed);
                return false;
        }
    }

    /// <summary>Reads a choice between ways that return; whether one of them is always taken.</summary>
    private bool If(IfStatementSyntax choice)
    {
        SyntaxTrivia? own = Comments.After(choice.CloseParenToken) ?? Comments.Of(choice.Condition);
        bool shared = own is null && Comments.OnOneLine(choice.Condition, choice.Statement), returns = false;
        Spot spot = new(choice.Condition, shared ? Comments.Of(choice.Statement) : own);
        Branch(choice.Condition, spot, () => Way(choice.Statement, shared), choice.Else is null ? null : () => returns = Way(choice.Else.Statement, quiet: false));
        return returns;
    }

    /// <summary>The lines of one way of a branch, which must end in a result, or in a further choice.</summary>
    private bool Way(StatementSyntax statement, bool quiet)
    {
        IEnumerable<StatementSyntax> statements = statement is BlockSyntax block ? block.Statements : new[] { statement };
        isQuiet = quiet;
        bool returns = Block(statements);
        isQuiet = false;
        if (!returns && statements.LastOrDefault() is not IfStatementSyntax)
            Fault(Descriptors.BadStatement, statement, statement.ToString().Split('\n')[0].Trim(), "each way of an if must return; " + Allowed);
        return returns;
    }

    private void Branch(ExpressionSyntax condition, Spot spot, Action then, Action? otherwise)
    {
        if (Conditions(condition) is not { } holds) return;
        ReasonModel? reason = ConditionReason(condition, spot);
        lines.Add(new BranchLine(holds, Inside(then), otherwise is null ? [] : Inside(otherwise), reason));
    }

    private EquatableArray<LineModel> Inside(Action read)
    {
        List<LineModel> outside = lines;
        string[] known = [.. symbols];
        lines = [];
        read();
        EquatableArray<LineModel> inside = [.. lines];
        lines = outside;
        symbols.IntersectWith(known);
        return inside;
    }

    private void Local(VariableDeclaratorSyntax variable)
    {
        string name = variable.Identifier.ValueText;
        if (model.GetDeclaredSymbol(variable) is not ILocalSymbol local || variable.Initializer is not { } initializer)
        {
            Fault(Descriptors.BadStatement, variable, variable.ToString(), "a local gets its value where it is declared");
            return;
        }

        if (local.IsRef || local.Type.SpecialType is not (SpecialType.System_Double or SpecialType.System_Int32))
        {
            Fault(Descriptors.BadStatement, variable, variable.ToString(), "a local value is a double, or an int for a count");
            return;
        }

        if (!symbols.Add(name)) Fault(Descriptors.SymbolTwice, variable.Identifier, name, "another quantity", "this local");
        List<UnitModel> units = [];
        Choose(initializer.Value, Spot.Of(variable), (value, spot) => { if (Value(name, value, spot) is { } found) units.Add(found); });
        UnitModel? other = units.Find(u => !u.IsNone && u != units[0]) ?? (units.Exists(u => u != units[0]) ? units[0] : null);
        if (other is not null && !nodes.Wish(name, other)) Fault(Descriptors.KindsApart, variable, variable.ToString(), UnitChecks.Apart(units[0], units.Find(u => u != units[0])!));
        letters[local] = new(name, units.FirstOrDefault());
    }

    /// <summary>Adds the line of a local value, and gives its unit.</summary>
    private UnitModel? Value(string name, ExpressionSyntax value, Spot spot)
    {
        if (nodes.Read(value) is not { } node) return null;
        if (wishes.TryGetValue(name, out UnitModel? wish)) node = Node.Fit(node, wish);
        if (wish is { IsAngle: true } && !node.IsAngle) nodes.WishAngles(node);
        LetterNode letter = new(name, node.Unit);
        ReasonModel? reason = Reason(spot, name);
        bool isCall = node is LetterNode && lines.LastOrDefault() is CallLine last && last.Symbol == node && last.Reason is null;
        if (isCall) symbols.Remove(((LetterNode)node).Name);
        if (isCall) lines[lines.Count - 1] = (CallLine)lines[lines.Count - 1] with { Symbol = letter, Reason = reason };
        else lines.Add(new ValueLine(letter, node, reason));
        return node.Unit;
    }

    private void Result(ExpressionSyntax value, Spot spot)
    {
        if (nodes.Read(value) is not { } node) return;
        UnitModel declared = signature.Result.Of!;
        node = Node.Fit(node, declared);
        if (node.Unit is { } unit && unit != declared && !(declared.IsAngle && nodes.WishAngles(node)))
            Fault(Descriptors.OtherUnit, value, method.Name, declared.ToString(), value.ToString(), unit.ToString(), UnitText.Of(node));
        lines.Add(new ResultLine(signature.Result, node, Reason(spot, signature.Result.Name)));
    }

    /// <summary>Reads a value, or the two values of a choice as a branch.</summary>
    private void Choose(ExpressionSyntax value, Spot spot, Action<ExpressionSyntax, Spot> read)
    {
        while (value is ParenthesizedExpressionSyntax inner) value = inner.Expression;
        if (value is not ConditionalExpressionSyntax choice)
        {
            read(value, spot);
            return;
        }

        SyntaxTrivia? own = Comments.Of(choice.Condition);
        bool shared = own is null && Comments.OnOneLine(choice.Condition, spot.At);
        Branch(choice.Condition, spot with { At = choice.Condition, Comment = shared ? spot.Comment : own },
            () => Choose(choice.WhenTrue, new(choice.WhenTrue, Comments.Of(choice.WhenTrue), shared || spot.IsQuiet), read),
            () => Choose(choice.WhenFalse, new(choice.WhenFalse, Comments.AtEnd(spot.At), shared || spot.IsQuiet), read));
    }

    private EquatableArray<ConditionModel>? Conditions(ExpressionSyntax condition)
    {
        while (condition is ParenthesizedExpressionSyntax inner) condition = inner.Expression;
        if (condition is BinaryExpressionSyntax { RawKind: (int)SyntaxKind.LogicalAndExpression } both)
            return Conditions(both.Left) is { } first && Conditions(both.Right) is { } second ? [.. first, .. second] : null;
        if (condition is BinaryExpressionSyntax comparison && ConditionSigns.Relation(comparison.Kind()) is { } relation)
            return nodes.ReadPair(comparison.Left, comparison.Right, comparison) is { } sides ? [new(sides.Left, relation, sides.Right)] : null;
        Fault(Descriptors.BadStatement, condition, condition.ToString(), "a condition compares two formulas by < <= > >= == or !=, or joins such comparisons by &&");
        return null;
    }

    private Node? Call(IMethodSymbol callee, Node[] arguments, InvocationExpressionSyntax at)
    {
        if (!NodeReader.IsExplained(callee)) return null;
        Signature called = Signature.Of(callee);
        if (called.Parameters.Count != arguments.Length) return null;
        for (int i = 0; i < arguments.Length; i++)
        {
            UnitModel wanted = called.Parameters[i].Symbol.Of!;
            arguments[i] = Node.Fit(arguments[i], wanted);
            if (arguments[i].Unit is not { } unit || unit == wanted || (wanted.IsAngle && nodes.WishAngles(arguments[i]))) continue;
            Fault(Descriptors.KindsApart, at.ArgumentList.Arguments[i], at.ArgumentList.Arguments[i].ToString(), $"is {unit}, but {callee.Name} takes {wanted}");
            return null;
        }

        string name = called.Result.Name;
        for (int i = 2; !symbols.Add(name); i++) name = called.Result.Name + Subscript.Of(i);
        Calls.Add(called.FullName);
        CallLine line = new(called.Result with { Name = name }, called.FullName, [.. arguments], null);
        lines.Add(line);
        return line.Symbol;
    }

    private bool IsRequire(InvocationExpressionSyntax call) =>
        model.GetSymbolInfo(call).Symbol is IMethodSymbol { Name: "That", ContainingType: var type } && type.ToDisplayString() == "Explain.Require";

    private ReasonModel? Reason(Spot spot, string gives) => reasons.Read(Heard(spot), Descriptors.NoReason, gives);

    private ReasonModel? ConditionReason(ExpressionSyntax condition, Spot spot) => reasons.Read(Heard(spot), Descriptors.NoConditionReason, condition.ToString());

    private Spot Heard(Spot spot) => spot with { IsQuiet = spot.IsQuiet || isQuiet };

    private void Fault(DiagnosticDescriptor descriptor, SyntaxNodeOrToken at, params string[] args) => Findings.Add(Finding.Of(descriptor, Place.Of(at.GetLocation()!), args));
}
