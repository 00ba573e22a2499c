namespace Explain;

/// <summary>How many boxes were examined in one working.</summary>
internal sealed class BoxCount
{
    public int Examined { get; private set; }

    public void Add() => Examined++;
}
