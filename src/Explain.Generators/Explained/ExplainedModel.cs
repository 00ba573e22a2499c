namespace Explain.Generators;

/// <summary>An explained method.</summary>
/// <param name="In">The type that declares it.</param>
/// <param name="Method">Its name.</param>
/// <param name="Property">The name of its formula, which tells overloads apart.</param>
/// <param name="IsPublic">Whether it is public.</param>
/// <param name="Title">Its summary.</param>
/// <param name="Parameters">What is put in.</param>
/// <param name="Result">The symbol and the unit of the result.</param>
/// <param name="Lines">What it does.</param>
/// <param name="Calls">The formulas that it calls, by their full names.</param>
internal sealed record ExplainedModel(TypeModel In, string Method, string Property, bool IsPublic, string Title,
    EquatableArray<ParameterModel> Parameters, LetterNode Result, EquatableArray<LineModel> Lines, EquatableArray<string> Calls)
{
    public string FullName => In.FullName + ".Formulas." + Property;
}
