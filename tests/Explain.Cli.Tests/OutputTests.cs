using System.Text.Json;

namespace Explain.Cli.Tests;

public sealed class OutputTests
{
    [Fact]
    public async Task Topics_are_listed_and_each_starts_with_a_file_that_names_it()
    {
        string[] topics = (await Run.Of(["topics"])).Out.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(4 * Topics.Standard.All.Count, topics.Length);
        topics = [.. topics.Where(t => !t.StartsWith(' '))];
        Assert.Equal(Topics.Standard.All.Select(t => t.Id.Name), topics);
        foreach (string topic in topics)
        {
            Run start = await Run.Of(["start", .. topic.Split(' ')]);
            Assert.Equal(0, start.Code);
            Assert.Contains($"topic: {topic}\n", start.Out, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Each_starter_is_solved_from_standard_input()
    {
        foreach (Topic topic in Topics.Standard.All)
        {
            Run run = await Run.Of(["solve", "-"], topic.Starter);
            Assert.Equal((0, true), (run.Code, run.Out.Length > 0));
        }
    }

    [Fact]
    public async Task A_topic_that_is_left_out_is_chosen_or_the_choice_is_listed()
    {
        Run shelf = await Run.Of(["solve", Demo.Path("shelf.yaml")]);
        Assert.Equal((0, ""), (shelf.Code, shelf.Error));
        Run either = await Run.Of(["solve", "-"], "figure: ABC is a triangle\ngiven: {AB: 7 m, angle BAC: 50°, angle ABC: 60°}\nfind: BC\n");
        Assert.Equal((2, ""), (either.Code, either.Out));
        Assert.StartsWith("-, line 1: ", either.Error, StringComparison.Ordinal);
        Assert.Contains("inaccessible distance, solve a triangle", either.Error, StringComparison.Ordinal);
        Assert.EndsWith("[which-topic]\n", either.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Json_is_one_object_a_line_in_the_order_of_the_files_refused_ones_too()
    {
        Run run = await Run.Of(["solve", Demo.Path("gate.yaml"), "-", "--form", "answer", "--output", "json"], Demo.FlatTriangle);
        JsonElement[] lines = [.. run.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(l => JsonDocument.Parse(l).RootElement)];
        Assert.Equal(["solved", "refused"], lines.Select(l => l.GetProperty("outcome").GetString()!));
        Assert.Equal(["1", "2"], lines[0].GetProperty("answers")[0].GetProperty("values").EnumerateArray().Select(v => v.GetProperty("case").GetString()!));
        Assert.Equal(0, lines[1].GetProperty("more").GetInt32());
        JsonElement error = lines[1].GetProperty("errors")[0];
        Assert.Equal("flat-triangle", error.GetProperty("code").GetString());
        Assert.Equal([4, 5, 6], error.GetProperty("lines").EnumerateArray().Select(l => l.GetInt32()));
    }

    [Fact]
    public async Task The_two_Englishes_name_the_sine_rule_each_in_its_way()
    {
        Run uk = await Run.Of(["solve", Demo.Path(Demo.Mast)]), us = await Run.Of(["solve", Demo.Path(Demo.Mast), "--english", "us"]);
        Assert.Equal((true, false), (Says(uk, "sine rule"), Says(uk, "law of sines")));
        Assert.Equal((false, true), (Says(us, "sine rule"), Says(us, "law of sines")));
    }

    [Theory]
    [InlineData("", new int[0])]
    [InlineData(", line 3", new[] { 3 })]
    [InlineData(", lines 3 and 9", new[] { 3, 9 })]
    [InlineData(", lines 3 to 5", new[] { 3, 4, 5 })]
    [InlineData(", lines 3, 4 and 6", new[] { 3, 4, 6 })]
    public void Lines_are_said_as_people_say_them(string said, int[] lines) => Assert.Equal(said, Report.LinesOf([.. lines]));

    private static bool Says(Run run, string words) => run.Out.Contains(words, StringComparison.OrdinalIgnoreCase);
}
