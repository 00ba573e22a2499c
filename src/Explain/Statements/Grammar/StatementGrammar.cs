namespace Explain;

/// <summary>
/// The one grammar of statements: reads every notation of every English, and prints each statement in one. Pure and bounded; what it
/// prints it reads back as the same statement.
/// </summary>
internal static class StatementGrammar
{
    /// <summary>Reads a statement; null when the text is none.</summary>
    public static Statement? Read(string text)
    {
        if (Tokens.Read(text) is not { Length: > 0 } tokens) return null;
        foreach (StatementRow row in StatementTable.Rows)
            if (row.Row.Match(tokens, 0) is { } match && match.End == tokens.Length && row.Make(match.Of) is { } made) return made;
        return ComparisonReader.Read(tokens);
    }

    /// <summary>Reads a statement, or says what is wrong with the text and what the nearest statement is.</summary>
    public static bool TryRead(string text, [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out Statement? statement, [System.Diagnostics.CodeAnalysis.NotNullWhen(false)] out Fault? fault)
    {
        statement = Read(text);
        fault = statement is null ? NearestStatement.Fault(text) : null;
        return statement is not null;
    }

    /// <summary>The statement as plain text.</summary>
    /// <exception cref="ArgumentException">The statement holds words of a wording file, or the value of a claim: a renderer prints it.</exception>
    public static string Write(Statement statement, English english) => string.Concat(Pieces(statement, english).Select(p => p.Words));

    /// <summary>The statement as words, names and formulas.</summary>
    /// <exception cref="ArgumentException">The statement holds words of a wording file, or the value of a claim.</exception>
    public static Items<StatementPiece> Pieces(Statement statement, English english)
    {
        switch (statement)
        {
            case Compare compare: return ComparisonText.Pieces(compare, english);
            case All all: return Joined(all.Of, ", and ", english);
            case AnyOf any: return Joined(any.Of, ", or ", english);
        }

        foreach (StatementRow row in StatementTable.Rows)
            if (row.Take(statement) is { } of && row.Row.Write(of, english) is { } pieces) return pieces;
        throw new ArgumentException(statement.ToString(), nameof(statement));
    }

    private static Items<StatementPiece> Joined(Items<Statement> statements, string between, English english)
    {
        List<StatementPiece> pieces = [];
        foreach (Statement statement in statements)
        {
            if (pieces.Count > 0) pieces.Add(new(between, null, null));
            pieces.AddRange(Pieces(statement, english));
        }

        return [.. pieces];
    }
}
