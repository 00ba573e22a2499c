namespace Explain.Tests.Architecture;

public sealed class FileTests
{
    private const int MostLines = 370;

    [Fact]
    public void No_file_is_long() => Assert.All(Library.Files("src").Concat(Library.Files("tests")), file =>
        Assert.True(File.ReadLines(file).Count() <= MostLines, Path.GetRelativePath(Library.Root, file)));
}
