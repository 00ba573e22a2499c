namespace Explain;

/// <summary>
/// Builds a problem in a program, in the words of a problem file. Each call returns a new problem; what is wrong is collected in
/// <see cref="Problem.Errors"/> and never thrown.
/// </summary>
public static class ProblemBuilder
{
    /// <summary>Adds statements of how the points and lines lie: <c>PQT is a triangle</c>.</summary>
    public static Problem Figure(this Problem problem, params ReadOnlySpan<string> statements) => Each(problem, statements, (p, text) => FigureEntry.Add(p, text, Next(p)));

    /// <summary>Adds a measurement: a quantity, such as <c>angle QPT</c>, and its value, such as <c>62° ± 0.5°</c> or <c>Degrees(62, within: 0.5)</c>.</summary>
    public static Problem Given(this Problem problem, string quantity, string value) => GivenEntry.Add(problem, quantity.Trim(), value.Trim(), Next(problem), Next(problem)).Checked();

    /// <summary>Adds things to find: <c>PT</c>, <c>distance from T to PQ</c>, <c>prove AB = CD</c>.</summary>
    public static Problem Find(this Problem problem, params ReadOnlySpan<string> wanted) => Each(problem, wanted, (p, text) => FindEntry.Add(p, null, text, Next(p)));

    /// <summary>Adds things to find in a lettered part.</summary>
    public static Problem FindIn(this Problem problem, string letter, params ReadOnlySpan<string> wanted) => Each(problem, wanted, (p, text) => FindEntry.Add(p, letter, text, Next(p)));

    /// <summary>Sets the heading.</summary>
    public static Problem Title(this Problem problem, string title) => problem with { Title = title };

    /// <summary>Sets the question to print; no data is read from it.</summary>
    public static Problem Question(this Problem problem, string question) => problem with { Question = question };

    /// <summary>Sets the wording of a lettered part.</summary>
    public static Problem Part(this Problem problem, string letter, string wording) => PartEntry.AddWording(problem, letter, wording);

    /// <summary>Sets the marks of a lettered part, 1 or more.</summary>
    public static Problem MarksFor(this Problem problem, string letter, int marks) =>
        PartEntry.AddMarks(problem, letter, marks.ToString(System.Globalization.CultureInfo.InvariantCulture), default).Checked();

    /// <summary>Says what a point or a quantity is in the story.</summary>
    public static Problem Name(this Problem problem, string of, string words) => (problem with { Names = problem.Names.With(new(of, words) { At = Next(problem) }) }).Checked();

    /// <summary>Adds assumptions to print.</summary>
    public static Problem Assume(this Problem problem, params ReadOnlySpan<string> assumptions) => Each(problem, assumptions, (p, text) => p with { Assume = p.Assume.With(text) });

    /// <summary>Adds methods to use, such as <c>sine rule</c>.</summary>
    public static Problem Method(this Problem problem, params ReadOnlySpan<string> methods) => Each(problem, methods, (p, text) => PartEntry.AddMethod(p, text, Next(p)));

    /// <summary>Sets the rounding of all answers, such as <c>3 significant figures</c>.</summary>
    public static Problem Round(this Problem problem, string rule) => RoundEntry.Add(problem, null, rule.Trim(), Next(problem)).Checked();

    /// <summary>Sets the rounding of the answers of one kind: lengths, areas, angles or ratios.</summary>
    public static Problem Round(this Problem problem, string kind, string rule) => RoundEntry.Add(problem, kind.Trim(), rule.Trim(), Next(problem)).Checked();

    /// <summary>Says how well the givens were measured: <c>nearest 0.1 m</c>, <c>0.5 m and 0.5°</c>.</summary>
    public static Problem Accuracy(this Problem problem, string accuracy) => MarginEntry.AddAccuracy(problem, accuracy.Trim(), Next(problem)).Checked();

    /// <summary>Says how exactly drawings are made: <c>1 mm and 1°</c>.</summary>
    public static Problem Tolerance(this Problem problem, string tolerance) => MarginEntry.AddTolerance(problem, tolerance.Trim(), Next(problem)).Checked();

    /// <summary>Sets the scale of drawings: <c>1 cm to 10 m</c>, <c>1 : 1000</c>.</summary>
    public static Problem Scale(this Problem problem, string scale) => ScaleEntry.Add(problem, scale.Trim(), Next(problem)).Checked();

    private static Problem Each(Problem problem, ReadOnlySpan<string> texts, Func<Problem, string, Problem> add)
    {
        foreach (string text in texts) problem = add(problem, text.Trim());
        return problem.Checked();
    }

    /// <summary>The place of the next entry in the order of the calls.</summary>
    private static Position Next(Problem problem) => new(0, problem.Figure.Count + problem.Given.Count + problem.Find.Count + problem.Extras.Count + problem.EntryErrors.Count + 1);
}
