namespace System;

/// <summary>What the compiler asks for in order to match lists by pattern.</summary>
internal readonly struct Index(int value, bool fromEnd = false)
{
    public int GetOffset(int length) => fromEnd ? length - value : value;
}
