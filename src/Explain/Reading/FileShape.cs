namespace Explain;

/// <summary>What may stand under a key.</summary>
[Flags]
internal enum FileShape
{
    /// <summary>One text.</summary>
    Text = 1,

    /// <summary>A list of texts.</summary>
    List = 2,

    /// <summary>A map.</summary>
    Map = 4,
}
