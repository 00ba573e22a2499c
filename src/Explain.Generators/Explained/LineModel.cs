namespace Explain.Generators;

/// <summary>A line of an explained method.</summary>
internal abstract record LineModel(ReasonModel? Reason)
{
    /// <summary>What the line gives a value to; null for a result or a condition.</summary>
    public virtual string? Gives => null;

    /// <summary>The symbols that the line itself uses, those of lines inside it apart.</summary>
    public abstract IEnumerable<LetterNode> Uses { get; }

    /// <summary>The line and those inside it.</summary>
    public virtual IEnumerable<LineModel> All => [this];
}
