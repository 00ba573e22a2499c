namespace Explain;

/// <summary>Reads problem files. A problem that cannot be read carries its errors; only the disc throws.</summary>
public static class ProblemReading
{
    private const int MostBytes = 256 * 1024;

    extension(Problem)
    {
        /// <summary>Reads a problem file in YAML or JSON.</summary>
        /// <param name="path">The file.</param>
        /// <exception cref="IOException">The file cannot be read.</exception>
        public static Problem Load(string path) => Problem.Read(File.ReadAllText(path), Path.GetFileName(path));

        /// <summary>Reads a problem from text in YAML or JSON.</summary>
        /// <param name="text">The text.</param>
        /// <param name="file">The name to print with errors and labels; null for none.</param>
        public static Problem Read(string text, string? file = null)
        {
            Problem empty = new() { File = file };
            try
            {
                if (text.Length > MostBytes) throw new ReadFault(ErrorCodes.TooLarge, new(1, 1), ReadingPhrases.FileTooLarge());
                string plain = text.TrimStart('\uFEFF').Replace("\r\n", "\n", StringComparison.Ordinal);
                return YamlReader.Read(plain) is ReadMap map ? new ProblemReader(map, empty).Read()
                    : throw new ReadFault(ErrorCodes.WrongShape, new(1, 1), ReadingPhrases.NotAMap());
            }
            catch (ReadFault fault)
            {
                return empty with { Errors = [new(fault.Code, [fault.At.Line], fault.At.Column, fault.Says, null)] };
            }
        }
    }
}
