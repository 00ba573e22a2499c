namespace Explain.Generators;

/// <summary>A parameter of an explained method.</summary>
internal sealed record ParameterModel(string Name, string Type, LetterNode Symbol);
