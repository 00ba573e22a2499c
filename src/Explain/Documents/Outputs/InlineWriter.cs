namespace Explain;

/// <summary>Writes runs in one output, each type escaped in its own way.</summary>
internal abstract class InlineWriter
{
    /// <summary>The folder of the output's templates.</summary>
    public abstract string Folder { get; }

    public string Write(Items<Inline> runs) => string.Concat(runs.Select(Write));

    /// <summary>Runs that a template puts at the beginning of a line.</summary>
    public virtual string Line(Items<Inline> runs) => Write(runs);

    /// <summary>Runs that a template sets in bold.</summary>
    public virtual string Bold(Items<Inline> runs) => Write(runs);

    /// <summary>A formula on a line of its own, or on several where it is too long for one.</summary>
    public abstract IEnumerable<string> Display(MathPiece line);

    /// <summary>What a reader sees of a template's own text: without commands, lengths and other markup of the output.</summary>
    /// <param name="text">What stands between two parts of a block.</param>
    public abstract string Visible(string text);

    protected abstract string Words(string text);

    protected abstract string User(string text);

    protected abstract string Mathematics(MathPiece piece);

    protected abstract string Strong(string inner);

    protected abstract string Emphasis(string inner);

    private string Write(Inline run) => run switch
    {
        WordRun w => Words(w.Text),
        StepRun s => Words(s.Number),
        CountRun c => Words(c.Text),
        UserRun u => User(u.Text),
        MathRun m => Mathematics(m.Is),
        Strong s => Strong(Write(s.Runs)),
        Emphasis e => Emphasis(Write(e.Runs)),
        _ => throw new ArgumentException(run.GetType().Name, nameof(run)),
    };
}
