namespace Explain.Tests.Reading;

public sealed class MutatedFileTests
{
    private static readonly string[] Scraps =
    [
        "\n", " ", "  ", "\t", ":", ": ", "- ", "[", "]", "{", "}", ",", "'", "\"", "&a ", "*a", "!!str ", "<<: ", "---\n", "...", "#", "|", ">", "%TAG ! x\n", "?", "\u0000", "\uD800", "\uFEFF",
        "9,5", "1e400", "√(", "√", "π", "(2x + 16)°", "±", "+/-", "5 ft 3 in", "∠", "△", "≅", "∥", "ABC", "A…K", "Z", "B₁", "shares", "given:", "find:", "angle ", "^", "^9", "((((((", "0", "-", "°", "\"", "é", "😀",
    ];

    /// <summary>What reading one file may allocate; the worst of 200 000 needed a quarter of it.</summary>
    private const long MostBytes = 2_000_000;

    private static int Wanted => Effort.Of(10_000, 100_000);

    [Fact]
    public void Broken_files_are_read_without_an_exception_and_in_bounded_work()
    {
        string[] sources = [.. TestFile.Good.Select(TestFile.Text), .. TestFile.Bad.Select(b => TestFile.Text(Path.Combine(TestFile.Folder("Bad"), b.File))), "{\"figure\":\"ABC is a triangle\",\"given\":{\"AB\":\"3 cm\"},\"find\":[\"BC\"]}"];
        Random random = new(20_240);
        int clean = Read(() => Broken(sources[random.Next(sources.Length)], random), random);
        Assert.InRange(clean, Wanted / 100, Wanted * 3 / 4);
    }

    [Fact]
    public void Drawn_files_are_read_without_an_exception_and_in_bounded_work()
    {
        Random random = new(7);
        int clean = Read(() => random.Next(4) == 0 ? Broken(new DrawnFile(random).Text(), random) : new DrawnFile(random).Text(), random);
        Assert.InRange(clean, Wanted / 500, Wanted * 3 / 4);
    }

    /// <summary>Reads files; returns how many of them nothing is wrong with.</summary>
    private static int Read(Func<string> next, Random random)
    {
        int clean = 0;
        for (int i = 0; i < Wanted; i++)
        {
            string text = next();
            long before = GC.GetAllocatedBytesForCurrentThread();
            Problem problem = Problem.Read(text, random.Next(8) == 0 ? "a.json" : "a.yaml");
            Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, MostBytes);
            if (problem.Errors.Count == 0) clean++;
            Check(problem, text.Count(c => c == '\n') + 2);
        }

        return clean;
    }

    /// <summary>Errors have known codes, stand on lines of the file in order, are said in words, and are not more than 20.</summary>
    private static void Check(Problem problem, int lines)
    {
        Assert.InRange(problem.Errors.Count, 0, 20);
        Assert.True(problem.MoreErrors == 0 || problem.Errors.Count == 20);
        int last = 1;
        foreach (ProblemError error in problem.Errors)
        {
            Assert.Contains(error.Code, ErrorCodes.All);
            Assert.InRange(error.Lines[0], last, lines);
            Assert.InRange(error.Lines[^1], error.Lines[0], lines);
            Assert.NotEmpty(TestFile.Said(error));
            last = error.Lines[0];
        }
    }

    /// <summary>The worst of each kind that fits into a file: the time is no test, the end is.</summary>
    [Fact]
    public void Hostile_files_come_to_an_end()
    {
        string big = "123456789012345678901234567891";
        string[] pairs = [.. from a in Enumerable.Range('A', 26) from b in Enumerable.Range('A', 26) where a < b select $"{(char)a}{(char)b}"];
        foreach (string text in (string[])
            [
                "given:\n" + string.Concat(pairs.Select(p => $"  {p}: {string.Join(" + ", Enumerable.Repeat("√" + big, 8))} cm\n")),
                "given:\n" + string.Concat(pairs.Select(p => $"  {p}: (1 + √2)^9^9 × {string.Join(" × ", Enumerable.Range(2, 7).Select(n => $"(√{n} + 1)"))} ÷ (√2 + √3 + √5 + √7) cm\n")),
                "figure:\n" + string.Concat(Enumerable.Repeat("- the foot of the perpendicular of the midpoint of the line\n", 4000)),
                string.Concat(Enumerable.Repeat("a: 1\n", 50_000)),
                "figure: [" + string.Concat(Enumerable.Repeat("{", 100_000)),
                "names: {" + string.Concat(Enumerable.Range(0, 20_000).Select(i => $"x{i}: y, ")) + "}",
                "question: " + new string('"', 9000) + "\n" + new string(' ', 100_000) + "\n" + new string('-', 100_000),
                "? " + string.Concat(Enumerable.Repeat("? ", 100_000)),
            ])
        {
            Problem problem = Problem.Read(text);
            Assert.InRange(problem.Errors.Count, 1, 20);
        }
    }

    private static string Broken(string text, Random random)
    {
        for (int n = random.Next(1, 6); n > 0; n--)
        {
            int at = random.Next(text.Length + 1), length = int.Min(random.Next(0, 12), text.Length - at);
            string scrap = random.Next(3) switch { 0 => "", 1 => Scraps[random.Next(Scraps.Length)], _ => text.Substring(random.Next(text.Length + 1) is var s && s + 5 <= text.Length ? s : 0, int.Min(5, text.Length)) };
            text = text[..at] + scrap + text[(at + length)..];
        }

        return text;
    }
}
