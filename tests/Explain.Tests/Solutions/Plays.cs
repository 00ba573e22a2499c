using System.Globalization;
using System.Runtime.CompilerServices;

namespace Explain.Tests.Solutions;

/// <summary>Problems to evaluate again, changes of their measurements, and what a solution is apart from its numbers.</summary>
internal static class Plays
{
    private const string Triangle = "solve a triangle", Distance = "inaccessible distance";

    /// <summary>Every demo problem, and problems of each kind of data, cases and stated facts.</summary>
    private static readonly (string Name, Problem Of)[] All =
    [
        .. Directory.EnumerateFiles(Folder("problems"), "*.yaml").Order(StringComparer.Ordinal).Select(f => (Path.GetFileNameWithoutExtension(f), Problem.Load(f))),
        ("baseline", Of(Distance, ["DEK is a triangle"], ["DE: 75 m ± 0.2 m", "angle KDE: 49°", "angle KED: 63° ± 0.5°"]).FindIn("a", "DK", "EK").FindIn("b", "distance from K to DE").FindIn("c", "bounds of distance from K to DE")),
        ("foot beyond", Of(Distance, ["DEK is a triangle"], ["DE: 45 m", "angle KDE: 31°", "angle KED: 115°"]).Find("DK", "distance from K to DE")),
        ("square to the baseline", Of(Distance, ["DEK is a triangle"], ["DE: 45 m", "angle KDE: 31°", "angle KED: 90°"]).Find("DK", "distance from K to DE")),
        ("measured throughout", Of(Distance, ["DEK is a triangle"], ["DE: 45 m ± 0.1 m", "angle KDE: 51° ± 0.25°", "angle KED: 65° ± 0.25°"]).Find("DK", "distance from K to DE")),
        ("two triangles", Of(Triangle, ["ABC is a triangle"], ["angle BAC: 38°", "AC: 2.5 m", "CB: 1.8 m"]).Find("AB", "angle ABC")),
        ("two triangles on a ray", Of(Triangle, ["ABC is a triangle", "X is on AB produced"], ["angle CAX: 33°", "AC: 25 cm", "CB: 17 cm"]).Find("AB")),
        ("the longer side opposite", Of(Triangle, ["ABC is a triangle"], ["angle BAC: 50°", "AC: 3 m", "CB: 4 m"]).Find("AB", "angle ABC")),
        ("a large angle", Of(Triangle, ["ABC is a triangle"], ["angle BAC: 110°", "AC: 3 m", "CB: 4 m"]).Find("AB", "angle ABC")),
        ("just reaches", Of(Triangle, ["ABC is a triangle"], ["angle BAC: 30°", "AC: 2 m", "CB: 1 m"]).Find("AB")),
        ("the acute one", Of(Triangle, ["ABC is a triangle", "angle ABC is acute"], ["angle BAC: 38°", "AC: 2.5 m", "CB: 1.8 m"]).Find("AB")),
        ("the obtuse one", Of(Triangle, ["ABC is a triangle", "angle ABC is obtuse"], ["angle BAC: 38°", "AC: 2.5 m", "CB: 1.8 m"]).Find("AB")),
        ("an acute angle of three sides", Of(Triangle, ["ABC is a triangle", "angle ABC is acute"], ["AB: 6 cm", "BC: 7 cm", "CA: 5 cm"]).Find("angle BAC")),
        ("more than is needed", Of(Triangle, ["ABC is a triangle"], ["AB: 3 m", "BC: 4 m", "CA: 5 m", "angle ABC: 90°"]).Find("angle BAC")),
        ("one from three sides", Of(Triangle, ["ABC is a triangle"], ["AB: 12 m", "BC: 9 m", "CA: 5 m"]).Find("number of triangles")),
        ("two angles", Of(Triangle, ["ABC is a triangle"], ["BC: 7.3 m", "angle CAB: 41°", "angle ABC: 66°"]).Find("AB", "CA")),
    ];

    public static IReadOnlyDictionary<string, Problem> Problems { get; } = All.ToDictionary(p => p.Name, p => p.Of);

    public static Solution Solved(Problem problem) => Assert.IsType<Solved>(new Solver().Solve(problem)).Solution;

    public static Solution Solved(string name) => Solved(Problems[name]);

    /// <summary>The given of the solution that states a quantity.</summary>
    public static ClaimId Given(this Solution solution, string of) => solution.Premises.First(p => p.Says is Compare { Terms: [SymbolUse use, ..] } && use.Symbol == QuantityGrammar.Read(of)).Id;

    public static Expr Value(string text) => ValueReader.TryRead(text, out GivenValue? value, out _) ? value!.Is : throw new ArgumentException(text);

    /// <summary>The problem with the changed measurements, to be solved afresh.</summary>
    public static Problem With(this Problem problem, Solution solution, IEnumerable<GivenIs> changes) => problem with
    {
        Given = [.. problem.Given.Select(g => changes.FirstOrDefault(c => c.Given == solution.Premises.First(p => p.Says == Compare.Equal(g.Of, g.Value)).Id) is { } change ? g with { Value = change.Value } : g)],
    };

    /// <summary>New numbers for some of the measurements: a little off, quite others, or at a border such as a right angle or a side equal to another.</summary>
    public static GivenIs[] Changes(Solution solution, Random random)
    {
        Given[] given = [.. solution.Of.Given];
        int strength = random.Next(3);
        GivenIs[] changes = [.. given.Where(_ => random.Next(3) > 0).Select(g => Change(g))];
        return changes.Length > 0 ? changes : [Change(given[random.Next(given.Length)])];

        GivenIs Change(Given g) => new(solution.Premises.First(p => p.Says == Compare.Equal(g.Of, g.Value)).Id, g.Of is Angle ? Value(Angle(g, random, strength) + "°") : Length(g, given, random, strength));
    }

    /// <summary>What a solution is apart from its numbers: its steps with their reasons, its cases, where its answers come from.</summary>
    public static IReadOnlyList<object> Shape(Solution solution) =>
    [
        .. solution.Steps.Select(s => (s.Id, s.GetType(), s.Says, s.Why, Ends(s))),
        .. solution.Parts.SelectMany(p => p.Answers).SelectMany(a => a.Values.Select(v => (a.For.AsTyped, v.Case, v.Item, v.From))),
    ];

    private static Items<(CaseEnd, Statement?)> Ends(Step step) => step is Split split ? [.. split.Cases.Select(c => (c.End, c.Label?.OnlyIf))] : [];

    private static string Angle(Given g, Random random, int strength)
    {
        double old = Number(g);
        double other = strength == 0 ? old + random.Next(-200, 201) / 100.0 : strength == 1 ? random.Next(10, 1790) / 10.0 : new[] { 30, 45, 60, 90, 120 }[random.Next(5)];
        return Math.Clamp(other, 0.5, 179.5).ToString(CultureInfo.InvariantCulture);
    }

    private static Expr Length(Given g, Given[] given, Random random, int strength)
    {
        Given[] others = [.. given.Where(o => o != g && o.Of is Length)];
        if (strength == 2 && others.Length > 0) return random.Next(2) == 0 ? others[random.Next(others.Length)].Value : (Expr)new Product(g.Value, new[] { 2, 3 }[random.Next(2)]);
        double factor = strength == 0 ? random.Next(970, 1031) / 1000.0 : random.Next(10, 40) / 10.0 * (random.Next(2) == 0 ? 0.1 : 1);
        return Value(((decimal)Number(g) * (decimal)factor).ToString(CultureInfo.InvariantCulture) + " " + ((Quantity)g.Value).Unit.Symbol);
    }

    private static double Number(Given g) => new Value(((Quantity)g.Value).Amount, ((Quantity)g.Value).Amount.Enclose(192), Unit.None).Number;

    private static Problem Of(string topic, string[] figure, string[] given) =>
        given.Select(g => g.Split(": ")).Aggregate(Problem.About(topic).Figure(figure), (p, g) => p.Given(g[0], g[1]));

    private static string Folder(string name, [CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", "docs", name));
}
