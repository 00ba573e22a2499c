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
        (Batch batch, StringWriter output, StringWriter error) = BatchOf(new Solver(), TextReader.Null, Demo.Path(Demo.Mast));
        Assert.Equal((ExitCode.Cancelled, "", "Cancelled.\n"), (batch.Run(cancelled.Token), output.ToString(), error.ToString()));
    }

    /// <summary>Cancelled while the second file is read: what was done is printed, and the summary says what was not.</summary>
    [Fact]
    public void A_batch_cancelled_half_way_is_130_and_keeps_what_is_done()
    {
        using CancellationTokenSource cancel = new();
        (Batch batch, StringWriter output, StringWriter error) = BatchOf(new Solver(), new CancellingReader(cancel, Demo.FlatTriangle), Demo.Path(Demo.Mast), "-", Demo.Path("sail.yaml"));
        Assert.Equal(ExitCode.Cancelled, batch.Run(cancel.Token));
        Assert.StartsWith("# A mast", output.ToString(), StringComparison.Ordinal);
        Assert.EndsWith("3 files: 1 ok, 2 not reached.\n", error.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_solution_that_fails_its_own_verification_is_3_and_outranks_all()
    {
        string area = Write("area.yaml", "topic: solve a triangle\nfigure: ABC is a triangle\ngiven: {AB: 13 cm, BC: 14 cm}\nfind: area of ABC\n"), absent = Path.Combine(folder.FullName, "absent.yaml");
        (Batch one, StringWriter output, StringWriter error) = BatchOf(FalseRule.Solver, TextReader.Null, area);
        Assert.Equal((ExitCode.Unverified, ""), (one.Run(default), output.ToString()));
        Assert.Contains("failed its own verification", error.ToString(), StringComparison.Ordinal);
        (Batch all, _, StringWriter summary) = BatchOf(FalseRule.Solver, TextReader.Null, area, absent, Write("flat.yaml", Demo.FlatTriangle), Demo.Path(Demo.Mast));
        Assert.Equal(ExitCode.Unverified, all.Run(default));
        Assert.EndsWith("4 files: 1 ok, 1 refused, 1 failed, 1 not read or written.\n", summary.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Several_files_end_with_a_line_each_and_one_for_all()
    {
        string flat = Write("flat.yaml", "title: A flat\n" + Demo.FlatTriangle), mast = Demo.Path(Demo.Mast), many = Write("many.yaml", string.Concat(Enumerable.Range(0, 30).Select(i => $"key{i}: x\n")));
        Run run = await Run.Of(["solve", mast, flat, many, "--form", "answer", "--output", "json"]);
        string[] said = run.Error.Split('\n')[^5..];
        int name = new[] { mast, flat, many }.Max(f => f.Length);
        Assert.Equal((1, 3), (run.Code, run.Out.Count(c => c == '\n')));
        Assert.StartsWith(mast.PadRight(name) + "  A mast", said[0], StringComparison.Ordinal);
        Assert.EndsWith("  ok", said[0], StringComparison.Ordinal);
        Assert.StartsWith(flat.PadRight(name) + "  A flat ", said[1], StringComparison.Ordinal);
        Assert.EndsWith("  refused: flat-triangle", said[1], StringComparison.Ordinal);
        Assert.EndsWith("  refused: unknown-key", said[2], StringComparison.Ordinal);
        Assert.Equal("3 files: 1 ok, 2 refused.", said[3]);
        Assert.Contains($"{many}: and 12 more.\n", run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("files:", (await Run.Of(["solve", mast])).Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Several_good_files_are_0_and_a_title_is_kept_to_one_line()
    {
        string[] lines = [.. File.ReadAllLines(Demo.Path(Demo.Mast)).Where(l => !l.StartsWith("title:", StringComparison.Ordinal))];
        string mast = Write("long.yaml", "title: |\n  A title\n  that goes on and on and on over its lines, and on\n" + string.Join('\n', lines));
        Run run = await Run.Of(["solve", mast, Demo.Path("sail.yaml"), "--form", "answer"]);
        Assert.Equal(0, run.Code);
        Assert.Contains("  A title that goes on and on and on over…  ok\n", run.Error, StringComparison.Ordinal);
        Assert.EndsWith("2 files: 2 ok.\n", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_template_that_brings_a_number_is_3_and_nothing_is_written()
    {
        House house = House.Of(KeyValuePair.Create("markdown/answer.scriban", "> **{{ lead }}** {{ text }} (7 marks)"));
        StringWriter output = new(), error = new() { NewLine = "\n" };
        string target = Path.Combine(folder.FullName, "audited");
        Batch batch = new(new([Demo.Path(Demo.Mast)], Form.Answer, Format.Markdown, new() { House = house }, target, false), new(TextReader.Null, output, error), new Solver());
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
        Assert.Equal((0, "", true), (run.Code, run.Out, run.Error.EndsWith("2 files: 2 ok.\n", StringComparison.Ordinal)));
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

    private static (Batch Batch, StringWriter Out, StringWriter Error) BatchOf(Solver solver, TextReader input, params string[] files)
    {
        StringWriter output = new() { NewLine = "\n" }, error = new() { NewLine = "\n" };
        return (new(new(files, Form.Answer, Format.Markdown, new(), null, false), new(input, output, error), solver), output, error);
    }

    /// <summary>Standard input that somebody cancels while it is read.</summary>
    private sealed class CancellingReader(CancellationTokenSource cancel, string text) : StringReader(text)
    {
        public override string ReadToEnd()
        {
            cancel.Cancel();
            return base.ReadToEnd();
        }
    }
}
