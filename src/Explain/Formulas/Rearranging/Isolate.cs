namespace Explain;

/// <summary>Rearranges an equation for one of its quantities by the moves of a textbook.</summary>
internal static class Isolate
{
    /// <summary>Null when the quantity does not occur, or when these moves do not reach it.</summary>
    public static Isolation? For(Equation equation, Symbol symbol) => For(equation, new SymbolUse(symbol));

    /// <summary>The same for part of the equation, such as sin A or cos A.</summary>
    public static Isolation? For(Equation equation, Expr target)
    {
        Workings workings = new(equation, target);
        if (!workings.IsSingle && !Gathering.Gather(workings)) return null;
        while (!workings.IsDone)
            if (!Peeling.Peel(workings)) return null;
        return workings.Result;
    }
}
