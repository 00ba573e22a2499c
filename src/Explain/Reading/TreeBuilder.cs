namespace Explain;

/// <summary>Puts a tree together from the events of YAML or the tokens of JSON, within the limits.</summary>
internal sealed class TreeBuilder(ReadingLimits limits)
{
    private readonly Stack<OpenNode> open = new();
    private readonly List<ProblemError> errors = [];
    private FileNode? root;
    private int more;

    public bool IsWhole => open.Count == 0 && root is not null;

    /// <summary>Whether the next text is the key of a map.</summary>
    public bool AwaitsKey => open.Count > 0 && open.Peek() is { IsMap: true, Key: null };

    public FileTree Tree => new(root, [.. errors], more);

    /// <summary>The tree is given up: the file cannot be read.</summary>
    public FileTree Stopped(Phrase message, Phrase? remedy, Position at) => new(null, [Error(ErrorCodes.UnreadableFile, message, remedy, at)]);

    /// <summary>Notes an error. They come in the order of the lines, so more than can be reported are counted, not kept.</summary>
    public void Refuse(string code, Phrase message, Phrase? remedy, Position at)
    {
        if (errors.Count < limits.Errors) errors.Add(Error(code, message, remedy, at));
        else more++;
    }

    /// <summary>Begins a list or a map; false when it stands too deep.</summary>
    public bool Open(bool isMap, Position at)
    {
        if (open.Count == limits.Nesting)
        {
            Refuse(ErrorCodes.TooLarge, ReadingPhrases.TooDeep(limits.Nesting), ProblemPhrases.RaiseTheLimit(), at);
            return false;
        }

        if (AwaitsKey) Refuse(ErrorCodes.WrongShape, ReadingPhrases.KeyIsNoText(), ReadingPhrases.WriteAKey(), at);
        open.Push(new(isMap, at) { Key = null, IsValueOfNothing = AwaitsKey });
        return true;
    }

    public void Close()
    {
        OpenNode closed = open.Pop();
        FileNode node = closed.IsMap ? new FileMap([.. closed.Entries], closed.At) : new FileList([.. closed.Items], closed.At);
        if (!closed.IsValueOfNothing) Put(node);
        else open.Peek().Key = new FileText("", closed.At);
    }

    public void Text(string text, Position at)
    {
        if (text.Length > limits.TextLength)
        {
            Refuse(ErrorCodes.TooLarge, ReadingPhrases.TextTooLong(limits.TextLength), ProblemPhrases.RaiseTheLimit(), at);
            text = "";
        }

        FileText node = new(Trimmed(text), at);
        if (AwaitsKey) open.Peek().Key = node;
        else Put(node);
    }

    /// <summary>Leaves out the entry whose key was read last.</summary>
    public void LeaveOut() => open.Peek().LeavesOut = true;

    private void Put(FileNode node)
    {
        if (open.Count == 0)
        {
            root ??= node;
            return;
        }

        OpenNode parent = open.Peek();
        if (parent.Items.Count + parent.Entries.Count == limits.Entries && !parent.IsFull)
        {
            parent.IsFull = true;
            Refuse(ErrorCodes.TooLarge, ReadingPhrases.TooManyEntries(limits.Entries), ProblemPhrases.RaiseTheLimit(), node.At);
        }

        if (parent.IsMap) Entry(parent, node);
        else if (!parent.IsFull) parent.Items.Add(node);
    }

    private void Entry(OpenNode parent, FileNode node)
    {
        FileText key = parent.Key!;
        parent.Key = null;
        if (parent.LeavesOut) parent.LeavesOut = false;
        else if (!parent.Keys.TryAdd(key.Is, key.At.Line)) Refuse(ErrorCodes.DuplicateKey, ReadingPhrases.DuplicateKey(key.Is, parent.Keys[key.Is]), ProblemPhrases.KeepOne(), key.At);
        else if (!parent.IsFull) parent.Entries.Add(new(key, node));
    }

    private static string Trimmed(string text) => text.Trim();

    private static ProblemError Error(string code, Phrase message, Phrase? remedy, Position at) => ProblemEntries.Error(new(code, message, remedy), at);
}
