namespace Explain;

/// <summary>Reads measurements.</summary>
internal sealed class GivenReader(List<ProblemError> errors)
{
    private readonly List<(Symbol Of, string Typed)> seen = [];

    public Given? Read(ReadText key, ReadText value, HashSet<string> points)
    {
        if (QuantityGrammar.Read(key.Text) is not { } symbol) return Add(NearestStatement.QuantityFault(key.Text), key.At);
        if (!ValueReader.TryRead(value.Text, out GivenValue? read, out Fault? fault)) return Add(fault, value.At);
        if (points.Count > 0 && Mentions.Points(symbol).FirstOrDefault(p => !points.Contains(p.Name)) is { } stranger)
            return Add(ErrorCodes.UnknownPoint, key.At, ReadingPhrases.UnknownPoint(key.Text, stranger.Name, string.Join(", ", points.Order(StringComparer.Ordinal))), ReadingPhrases.SayWhere(stranger.Name));
        if (UnitError(symbol, key.Text, value, read) is { } error) return Add(error.Code, value.At, error.Says, error.Remedy);
        if (seen.FirstOrDefault(s => s.Of == symbol).Typed is { } earlier)
            return Add(ErrorCodes.GivenTwice, key.At, ReadingPhrases.GivenTwice(key.Text, earlier), ReadingPhrases.KeepOne());
        seen.Add((symbol, key.Text));
        return new(symbol, read.Is, read.Within, read.Typed, key.At);
    }

    private static (string Code, Phrase Says, Phrase? Remedy)? UnitError(Symbol symbol, string key, ReadText value, GivenValue read)
    {
        bool angle = symbol is Angle or Bearing;
        if (read.Unit == Unit.None)
            return (ErrorCodes.MissingUnit, ReadingPhrases.MissingUnit(value.Text, key), angle ? StatementPhrases.DidYouMean(value.Text + "°") : null);
        if (read.Unit.IsAngle != angle)
            return (ErrorCodes.WrongUnit, angle ? ReadingPhrases.WrongUnitForAngle(value.Text, key) : ReadingPhrases.WrongUnitForLength(value.Text, key), null);
        return read.Number is { Sign: <= 0 } ? (ErrorCodes.NotPositive, ReadingPhrases.NotPositive(value.Text, key), null) : null;
    }

    private Given? Add(Fault fault, Position at) => Add(fault.Code, at, fault.Message, fault.Remedy);

    private Given? Add(string code, Position at, Phrase message, Phrase? remedy)
    {
        errors.Add(new(code, [at.Line], at.Column, message, remedy));
        return null;
    }
}
