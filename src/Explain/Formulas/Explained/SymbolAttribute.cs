namespace Explain;

/// <summary>The symbol under which a parameter or a result is printed.</summary>
/// <param name="symbol">The symbol, such as r or α.</param>
[AttributeUsage(AttributeTargets.Parameter | AttributeTargets.ReturnValue)]
public sealed class SymbolAttribute(string symbol) : Attribute
{
    /// <summary>The symbol.</summary>
    public string Symbol { get; } = symbol;
}
