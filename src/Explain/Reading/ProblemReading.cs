namespace Explain;

/// <summary>Reads problems from files and texts, in YAML or JSON.</summary>
public static class ProblemReading
{
    extension(Problem)
    {
        /// <summary>Reads a problem file. Only the disc throws: what is wrong with the file is in <see cref="Problem.Errors"/>.</summary>
        /// <param name="path">The file; a name that ends in .json is read as JSON.</param>
        /// <param name="limits">The limits to read it within; null for the usual ones.</param>
        /// <exception cref="IOException">The file cannot be read from the disc.</exception>
        /// <exception cref="UnauthorizedAccessException">The file may not be read.</exception>
        public static Problem Load(string path, ReadingLimits? limits = null)
        {
            ReadingLimits within = limits ?? ReadingLimits.Default;
            string name = Path.GetFileName(path);
            return ProblemFile.Text(path, within, out ProblemError? error) is { } text
                ? Problem.Read(text, name, within)
                : new Problem { File = name, Limits = within, Errors = [error!] };
        }

        /// <summary>Reads the text of a problem file. Never throws for its content.</summary>
        /// <param name="text">The text, YAML or JSON.</param>
        /// <param name="fileName">The name to say in errors; one that ends in .json is read as JSON. Null when there is none.</param>
        /// <param name="limits">The limits to read it within; null for the usual ones.</param>
        public static Problem Read(string text, string? fileName = null, ReadingLimits? limits = null)
        {
            ReadingLimits within = limits ?? ReadingLimits.Default;
            FileTree tree = ProblemFile.Tree(text, fileName, within);
            Problem empty = new() { File = fileName, Limits = within, EntryErrors = tree.Errors, MoreErrors = tree.More };
            return tree.Root is null ? empty with { Errors = tree.Errors } : TreeReader.Read(tree.Root, empty).Checked();
        }
    }
}
