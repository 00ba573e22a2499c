namespace Explain;

/// <summary>Adds what belongs to a lettered part: its wording, its marks.</summary>
internal static class PartEntry
{
    public static Problem AddWording(Problem problem, string letter, string text) => problem with { Parts = problem.Parts.With(new(letter, text)) };

    public static Problem AddMarks(Problem problem, string letter, string text, Position at) => Count.Read(text, out Fault? fault) is not { } count
        ? problem.With(fault!, at)
        : count.Numerator > problem.Limits.Marks
            ? problem.With(new(ErrorCodes.TooLarge, ProblemPhrases.TooManyMarks(text, problem.Limits.Marks), ProblemPhrases.RaiseTheLimit()), at)
            : problem with { Marks = problem.Marks.With(new(letter, (int)count.Numerator)) };

    public static Problem AddMethod(Problem problem, string text, Position at) => MethodNames.Read(text) is { } method
        ? problem with { Methods = problem.Methods.With(method) }
        : problem.With(MethodNames.Fault(text), at);
}
