using CsCheck;

namespace Explain.Tests.Reading;

/// <summary>A file drawn over all tables: keys, statements, quantities, values, goals, in any number and order, tame or wild.</summary>
internal sealed class DrawnFile(Random random)
{
    private readonly bool wild = random.Next(3) > 0;

    private string[] Letters => [.. Enumerable.Range('a', 3).Select(c => ((char)c).ToString())];

    public string Text()
    {
        string[] entries = [.. FileKeys.All.Where(k => k.Name is "figure" or "given" or "find" || random.Next(4) == 0).Select(k => Entry(k.Name))];
        if (random.Next(3) == 0) random.Shuffle(entries);
        return string.Join("\n", entries) + "\n";
    }

    private string Entry(string key) => wild && random.Next(40) == 0 ? key[1..] + ": x" : key + ":" + key switch
    {
        "topic" => " " + Any([.. KnownTopics.All.Select(k => k.Id.Name)], "juggling", "solve a traingle", ""),
        "figure" => List(4, Statement),
        "given" => Map(5, _ => random.Next(8) == 0 ? Any(["shares", "first cut", "tether"]) : Quantity(), Value),
        "find" => random.Next(2) == 0 ? List(3, Goal) : Map(3, i => Letters[i], Goal),
        "parts" => Map(3, i => Letters[i], () => "Find it."),
        "names" => Map(3, _ => Quantity(), () => "the wall"),
        "marks" => Map(3, i => Letters[i], () => Any(["1", "4"], "0", "2.5", "many", "5000")),
        "round" => random.Next(2) == 0 ? " " + Rounding() : Map(3, _ => Any(["lengths", "areas", "angles", "ratios"], "edges"), Rounding),
        "scale" => " " + Any(["1 cm to 10 m", "1:1000", "1/4 in to 1 ft"], "small", "0 to 0"),
        "tolerance" => " " + Any(["1 mm and 1°", "1 mm", "± 1/8 in"], "1 m and 2 m", "0 m", "5"),
        "accuracy" => " " + Any(["nearest 0.1 m", "0.5 m and 0.5°", "nearest minute"], "nearest", "0 m", "5"),
        "method" => List(2, () => Any([.. MethodNames.All], "magic")),
        _ => " some words",
    };

    private string Rounding() => Any(["3 significant figures", "exact", "exact, 2 decimal places", "1 decimal place"], "nearest inch", "about right", "");

    private string Statement() => wild ? Drawn(RandomFigures.Any.Select(s => StatementGrammar.Write(s, English.UnitedKingdom)), "ABC is a triangle", "ABCD is a square", "D is on AB")
        : Any(["ABC is a triangle", "ABCD is a kite", "D is on AB", "AB ∥ CD", "angle ABC is acute"]);

    private string Quantity() => wild ? Drawn(RandomFigures.Quantity.Select(q => QuantityGrammar.Write(q, English.UnitedStates)), "AB", "BC", "CA", "angle ABC", "angle BCA", "radius")
        : Any(["AB", "BC", "AC", "angle ABC", "m∠BCA", "radius of the circle"]);

    private string Value() => Any(["3 cm", "4 cm", "6 m ± 0.1 m", "40°", "62° 30'", "(2x + 16)°", "5 ft 3 1/2 in"], "7", "A", "-3 cm", "9,5 m")
        is var usual && wild ? Drawn(RandomFigures.Value.Select(v => FormulaText.Write(v, English.UnitedKingdom)), usual) : usual;

    private string Goal() => random.Next(3) == 0 ? Any([.. GoalTable.Rows.Select(r => r.Row.In(English.UnitedKingdom).Text)]).Replace("A…C", "ABC", StringComparison.Ordinal).Replace("DEF", "ACB", StringComparison.Ordinal)
        : random.Next(4) == 0 ? "prove " + Statement() : Any(["", "", "bounds of "]) + Quantity() + Any(["", "", ""], " by sine rule");

    /// <summary>Mostly one of the usual, otherwise one drawn over a table, now and then cut short.</summary>
    private string Drawn(Gen<string> gen, params string[] usual)
    {
        if (random.Next(3) > 0) return usual[random.Next(usual.Length)];
        string drawn = gen.Generate(new PCG((uint)random.Next(1, 1000), (ulong)random.NextInt64()), null, out _);
        return random.Next(20) == 0 ? drawn[..random.Next(drawn.Length)] : drawn;
    }

    private string List(int most, Func<string> item) => string.Concat(Enumerable.Range(0, random.Next(1, most + 1)).Select(_ => "\n  - " + Quoted(item())));

    private string Map(int most, Func<int, string> key, Func<string> value) =>
        string.Concat(Enumerable.Range(0, random.Next(1, most + 1)).Select(i => $"\n  {Quoted(key(i))}: {Quoted(value())}"));

    private static string Quoted(string text) => "\"" + text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal) + "\"";

    /// <summary>One of the good, or, in a wild file, now and then of the bad.</summary>
    private string Any(string[] good, params string[] bad) => wild && bad.Length > 0 && random.Next(6) == 0 ? bad[random.Next(bad.Length)] : good[random.Next(good.Length)];
}
