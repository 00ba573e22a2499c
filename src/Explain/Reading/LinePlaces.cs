namespace Explain;

/// <summary>Finds the line and the column of a byte of a file.</summary>
internal sealed class LinePlaces
{
    private readonly byte[] bytes;
    private readonly List<int> starts = [0];

    public LinePlaces(byte[] bytes)
    {
        this.bytes = bytes;
        for (int i = 0; i < bytes.Length; i++)
            if (bytes[i] == (byte)'\n') starts.Add(i + 1);
    }

    /// <summary>Line and column, counted from 1; the column counts characters.</summary>
    public Position Of(int index)
    {
        int found = starts.BinarySearch(index);
        int line = found >= 0 ? found : ~found - 1;
        int column = System.Text.Encoding.UTF8.GetCharCount(bytes, starts[line], int.Min(index, bytes.Length) - starts[line]);
        return new(line + 1, column + 1);
    }
}
