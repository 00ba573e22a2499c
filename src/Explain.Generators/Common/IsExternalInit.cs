namespace System.Runtime.CompilerServices;

/// <summary>What the compiler asks for in order to write init-only members for the older framework.</summary>
internal static class IsExternalInit;
