namespace Explain.Cli.Tests;

public sealed class ExitCodeTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("explain-tests-");

    public void Dispose() => folder.Delete(recursive: true);

    [Fact]
    public async Task A_file_at_fault_is_2_and_says_where_what_and_the_code()
    {
        string flat = Write("flat.yaml", Demo.FlatTriangle);
        Run run = await Run.Of(["solve", flat]);
        Assert.Equal((2, ""), (run.Code, run.Out));
        Assert.StartsWith($"{flat}, lines 4 to 6: ", run.Error, StringComparison.Ordinal);
        Assert.Contains("[flat-triangle]", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_batch_with_a_file_at_fault_is_1_and_solves_the_others()
    {
        Run run = await Run.Of(["solve", Write("flat.yaml", Demo.FlatTriangle), Demo.Path(Demo.Mast), "--form", "answer"]);
        Assert.Equal(1, run.Code);
        Assert.StartsWith("# A mast", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_that_is_not_there_is_4_also_beside_one_at_fault()
    {
        string absent = Path.Combine(folder.FullName, "absent.yaml");
        Assert.Equal(4, (await Run.Of(["solve", absent])).Code);
        Assert.Equal(4, (await Run.Of(["solve", absent, Write("flat.yaml", Demo.FlatTriangle)])).Code);
    }

    [Fact]
    public async Task A_target_that_cannot_be_written_is_4() =>
        Assert.Equal(4, (await Run.Of(["solve", Demo.Path(Demo.Mast), "--into", Write("a-file", "")])).Code);

    [Theory]
    [InlineData("solve", "mast.yaml", "--fomr", "answer")]
    [InlineData("solve", "mast.yaml", "--form", "essay")]
    [InlineData("solve", "mast.yaml", "--output", "json")]
    [InlineData("solve", "-", "-")]
    [InlineData("solve")]
    [InlineData("start", "a", "topic", "of", "nobody")]
    [InlineData("start", "--topic", "solve a triangle")]
    [InlineData("solv", "mast.yaml")]
    [InlineData]
    public async Task Bad_arguments_are_2_and_nothing_is_printed(params string[] args)
    {
        Run run = await Run.Of(args);
        Assert.Equal((2, ""), (run.Code, run.Out));
        Assert.StartsWith("explain: ", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cancelled_batch_is_130()
    {
        using CancellationTokenSource cancelled = new();
        cancelled.Cancel();
        StringWriter output = new();
        Batch batch = new(new([Demo.Path(Demo.Mast)], Form.Answer, Format.Markdown, new(), null, false), new(TextReader.Null, output, TextWriter.Null));
        Assert.Equal((ExitCode.Cancelled, ""), (batch.Run(cancelled.Token), output.ToString()));
    }

    [Fact]
    public void A_template_that_brings_a_number_is_3_and_nothing_is_written()
    {
        House house = House.Of(KeyValuePair.Create("markdown/answer.scriban", "> **{{ lead }}** {{ text }} (7 marks)"));
        StringWriter output = new(), error = new() { NewLine = "\n" };
        string target = Path.Combine(folder.FullName, "audited");
        Batch batch = new(new([Demo.Path(Demo.Mast)], Form.Answer, Format.Markdown, new() { House = house }, target, false), new(TextReader.Null, output, error));
        Assert.Equal((ExitCode.Unverified, ""), (batch.Run(CancellationToken.None), output.ToString()));
        Assert.False(Directory.Exists(target));
        Assert.Contains("something that is not in its solution", error.ToString(), StringComparison.Ordinal);
        Assert.EndsWith("  V8: template number 7\n", error.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Into_a_folder_goes_one_file_a_problem_and_two_of_one_name_are_refused()
    {
        string target = Path.Combine(folder.FullName, "out");
        Run run = await Run.Of(["solve", Demo.Path(Demo.Mast), Demo.Path("sail.yaml"), "--into", target, "--output", "latex"]);
        Assert.Equal((0, ""), (run.Code, run.Out));
        Assert.Equal(["mast.tex", "sail.tex"], Directory.GetFiles(target).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal));
        string copy = Write("mast.yaml", Demo.FlatTriangle);
        Assert.Equal(2, (await Run.Of(["solve", Demo.Path(Demo.Mast), copy, "--into", target])).Code);
    }

    private string Write(string name, string text)
    {
        string path = Path.Combine(folder.FullName, name);
        File.WriteAllText(path, text);
        return path;
    }
}
