using System.Text.Json;

namespace Explain.Cli.Tests;

public sealed class DemoTests
{
    public static TheoryData<string> Files => [.. Directory.GetFiles(Demo.Folder, "*.yaml").Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Files))]
    public async Task Every_demo_is_solved_in_every_form_and_output(string file)
    {
        foreach (string form in (string[])["question", "worked-solution", "answer"])
        {
            foreach (string output in (string[])["markdown", "latex"])
            {
                Run run = await Run.Of(["solve", Demo.Path(file), "--form", form, "--output", output]);
                Assert.Equal((0, true), (run.Code, run.Out.Length > 50));
            }
        }
    }

    /// <summary>Worked by hand with the sine rule and the right-angled triangle: KM = 96 sin 58° / sin 56°, height = KM sin 66°.</summary>
    [Fact]
    public async Task The_answers_of_the_mast_are_those_of_double_arithmetic()
    {
        static double Sin(double degrees) => Math.Sin(double.DegreesToRadians(degrees));
        Run run = await Run.Of(["solve", Demo.Path(Demo.Mast), "--form", "answer", "--output", "json"]);
        JsonElement answers = JsonDocument.Parse(run.Out).RootElement.GetProperty("answers");
        double[] numbers = [.. answers.EnumerateArray().Select(a => a.GetProperty("values")[0].GetProperty("number").GetDouble())];
        Assert.Equal(96 * Sin(66) / Sin(56), numbers[0], 1e-9);
        Assert.Equal(96 * Sin(58) / Sin(56), numbers[1], 1e-9);
        Assert.Equal(96 * Sin(58) * Sin(66) / Sin(56), numbers[2], 1e-9);
    }

    [Fact]
    public async Task Bounds_hold_the_value_at_drawn_measurements()
    {
        Run run = await Run.Of(["solve", Demo.Path(Demo.Mast), "--form", "answer", "--output", "json"]);
        JsonElement bounds = JsonDocument.Parse(run.Out).RootElement.GetProperty("answers")[3].GetProperty("values")[0].GetProperty("bounds");
        (double lower, double upper) = (End(bounds, "lower"), End(bounds, "upper"));
        Random random = new(7);
        for (int i = 0; i < 10_000; i++)
        {
            double jk = 95.5 + random.NextDouble(), j = 57.5 + random.NextDouble(), k = 65.5 + random.NextDouble();
            double height = jk / (1 / Math.Tan(double.DegreesToRadians(j)) + 1 / Math.Tan(double.DegreesToRadians(k)));
            Assert.InRange(height, lower - 1e-9, upper + 1e-9);
        }
    }

    private static double End(JsonElement bounds, string end) => bounds.GetProperty(end).GetProperty("number").GetDouble();
}
