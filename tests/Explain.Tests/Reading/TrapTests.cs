using System.Globalization;
using System.Text;

namespace Explain.Tests.Reading;

/// <summary>Where YAML guesses, where files are hostile, where cultures differ.</summary>
public sealed class TrapTests
{
    private const string Small = "figure: ABC is a triangle\ngiven:\n  AB: 3 cm\nfind: BC\n";

    [Fact]
    public void Points_named_N_Y_and_NO_stay_points()
    {
        Problem problem = TestFile.Read("figure: [NOY is a triangle, N is on YO]\ngiven: {NO: 3 cm, NY: 4 cm}\nfind: {a: NO, b: n, c: [OY]}\nnames: {N: no, Y: yes, NO: null}\n");
        Assert.Equal(["found"], problem.Find.Any(g => g.Wanted == new Length(new("N"), new("O"))) ? ["found"] : Array.Empty<string>());
        Assert.Equal(["no", "yes", "null"], problem.Names.Select(n => n.Is));
        Assert.Empty(TestFile.Said(problem));
    }

    [Theory]
    [InlineData("1e3 m", 1000.0)]
    [InlineData("0x10 m", null)]
    [InlineData("010 m", 10.0)]
    [InlineData("1_000 m", null)]
    [InlineData(".5 m", 0.5)]
    [InlineData("12 500 m", 12500.0)]
    [InlineData("1:50 m", null)]
    [InlineData("22:30 m", null)]
    public void Numbers_are_read_as_typed_and_not_as_YAML_guesses(string typed, double? value)
    {
        Problem problem = TestFile.Read($"figure: ABC is a triangle\ngiven:\n  AB: {typed}\nfind: BC\n");
        if (value is { } number) Assert.Equal(number, ((Quantity)problem.Given.Single().Value).Amount.Rational!.Value.ToDouble());
        else Assert.Equal([ErrorCodes.UnreadableNumber], problem.Errors.Select(e => e.Code));
    }

    [Theory]
    [InlineData("1:50", 1, 50)]
    [InlineData("\"1 : 1000\"", 1, 1000)]
    public void A_scale_of_1_to_50_is_not_110(string typed, int paper, int reality)
    {
        Problem problem = TestFile.Read(Small + $"scale: {typed}\n");
        Assert.Empty(TestFile.Said(problem));
        Assert.Equal(new DrawingScale(new(Exact.Of(paper), Unit.None), new(Exact.Of(reality), Unit.None), typed.Trim('"')), problem.Scale);
    }

    [Fact]
    public void Windows_lines_and_a_byte_order_mark_change_nothing()
    {
        Problem plain = TestFile.Read(Small);
        Assert.Equal(plain, TestFile.Read("\uFEFF" + Small.Replace("\n", "\r\n", StringComparison.Ordinal)));
        Assert.Empty(plain.Errors);
    }

    [Fact]
    public void A_file_on_the_disc_is_read_as_its_text()
    {
        string folder = Directory.CreateTempSubdirectory().FullName;
        string Write(byte[] bytes)
        {
            File.WriteAllBytes(Path.Combine(folder, "a.yaml"), bytes);
            return Path.Combine(folder, "a.yaml");
        }

        Assert.Equal(TestFile.Read(Small), Problem.Load(Write(Encoding.UTF8.GetBytes(Small))));
        Assert.Equal(["2: the file is not UTF-8 text | save it as UTF-8 [unreadable-file]"], TestFile.Said(Problem.Load(Write([(byte)'a', (byte)'\n', 0xFF, 0xFE]))));
        Assert.Equal([ErrorCodes.TooLarge], Problem.Load(Write(new byte[300_000])).Errors.Select(e => e.Code));
        Assert.Throws<FileNotFoundException>(() => Problem.Load(Path.Combine(folder, "none.yaml")));
        Directory.Delete(folder, recursive: true);
    }

    [Theory]
    [InlineData(7, 0)]
    [InlineData(8, 1)]
    [InlineData(100_000, 1)]
    public void Nesting_has_a_limit(int deep, int tooLarge)
    {
        foreach (string text in (string[])["assume: " + new string('[', deep) + "x" + new string(']', deep) + "\n" + Small, "assume: " + new string('[', deep), "{\"assume\":" + new string('[', deep) + new string(']', deep) + "}"])
            Assert.Equal(tooLarge, TestFile.Read(text).Errors.Count(e => e.Code == ErrorCodes.TooLarge && e.Lines[0] == 1));
    }

    [Fact]
    public void A_program_may_raise_a_limit()
    {
        string text = "topic: equal shares\nfigure: ABCD is a square\ngiven: {AB: 3 cm, shares: 5000}\nfind: cuts\n";
        Assert.Equal([ErrorCodes.TooLarge], TestFile.Codes(text));
        Assert.Empty(Problem.Read(text, null, new ReadingLimits { Shares = 10_000 }).Errors);
    }

    [Fact]
    public void The_culture_of_the_machine_changes_nothing()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        string[] expected = [.. TestFile.Good.Select(f => Problem.Load(f).ToString())];
        try
        {
            foreach ((string point, string minus) in ((string, string)[])[(",", "-"), ("٫", "؜-"), (".", "−")])
            {
                CultureInfo culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
                (culture.NumberFormat.NumberDecimalSeparator, culture.NumberFormat.NumberGroupSeparator, culture.NumberFormat.NegativeSign) = (point, "'", minus);
                CultureInfo.CurrentCulture = culture;
                Assert.Equal(expected, TestFile.Good.Select(f => Problem.Load(f).ToString()));
                Assert.Equal(["9.5 cm"], Problem.About("x").Figure("ABC is a triangle").Given("AB", Units.Centimetres(9.5)).Given.Select(g => g.Typed));
            }
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
