using Explain.Tests.Solving;

namespace Explain.Tests.Documents.Auditing;

/// <summary>Pages of drawn problems hold no stranger: none is refused, in any English, output, detail and with either decimal sign.</summary>
public sealed class RandomPageTests
{
    private static readonly int Draws = Effort.Of(20, 100, 200);
    private static readonly string[] Roundings = ["3 significant figures", "2 decimal places", "exact, 4 significant figures", "{lengths: nearest mm, angles: nearest 0.5°}"];

    [Fact]
    public void PagesOfDrawnProblems_ArePrinted()
    {
        Random random = new(20_261_125);
        Renderer[] renderers = [.. Enum.GetValues<English>().SelectMany(e => Enum.GetValues<Detail>().Select(d => new Renderer(new RendererOptions { English = e, Detail = d, Numbers = (DecimalSign)random.Next(2) })))];
        int printed = 0;
        for (int i = 0; printed < Draws; i++)
        {
            Assert.True(i < 4 * Draws);
            string text = Drawn(random);
            if (new Solver().Solve(Problem.Read(text, "drawn.yaml")) is not Solved { Solution: var solution }) continue;
            printed++;
            foreach (Renderer renderer in renderers)
                foreach (Output output in Enum.GetValues<Output>())
                    foreach (Form form in Enum.GetValues<Form>())
                        Assert.True(Record.Exception(() => renderer.Render(solution, form, output)) is var thrown && thrown is null, $"{text}{thrown}");
        }
    }

    [Fact]
    public void ASwingingSideInMixedUnits_HasACheckThatCanBePrinted()
    {
        const string Text = "topic: solve a triangle\nfigure: ABC is a triangle\ngiven: {BC: 164.4 cm, CA: 119 in, angle ABC: 59°}\nfind: {a: sides of ABC, b: angles of ABC}\n";
        Solution solution = Assert.IsType<Solved>(new Solver().Solve(Problem.Read(Text))).Solution;
        Assert.Contains("this is the value found before", new Renderer().Render(solution, Form.WorkedSolution, Output.Markdown), StringComparison.Ordinal);
    }

    /// <summary>A triangle with measurements of one of four kinds, in mixed units, some with tolerances.</summary>
    private static string Drawn(Random random)
    {
        string[] kinds = ["AB BC CA", "AB CA angle_BAC", "AB angle_BAC angle_ABC", "BC CA angle_ABC"], units = ["cm", "m", "ft", "in"];
        bool surveyed = random.Next(3) == 0, within = random.Next(3) == 0;
        string[] given = kinds[surveyed ? 2 : random.Next(4)].Split(' ');
        string unit = units[random.Next(4)];
        string Measure(string of) => of.StartsWith('a') ? $"{random.Next(20, 80)}{(random.Next(2) == 0 ? ".5" : "")}°{(within ? " ± 0.5°" : "")}"
            : $"{random.Next(10, 300)}{(random.Next(2) == 0 ? "." + random.Next(1, 100) : "")} {(random.Next(4) == 0 ? units[random.Next(4)] : unit)}{(within ? " ± 0.2 " + unit : "")}";
        string find = surveyed ? within ? "{a: [CA, BC], b: distance from C to AB, c: bounds of distance from C to AB}" : "[CA, distance from C to AB]"
            : given.Length == 3 && given[2] == "CA" ? "angles of ABC" : "{a: sides of ABC, b: angles of ABC}";
        return $"topic: {(surveyed ? "inaccessible distance" : "solve a triangle")}\ntitle: No. {random.Next(100)}\nfigure: ABC is a triangle\n"
            + $"given:\n{string.Concat(given.Select(g => $"  {g.Replace('_', ' ')}: {Measure(g)}\n"))}find: {find}\nround: {Roundings[random.Next(Roundings.Length)]}\n";
    }
}
