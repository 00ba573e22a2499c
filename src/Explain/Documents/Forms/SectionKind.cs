namespace Explain;

/// <summary>The sections of a page, in their order. A part's own sections come together, the others after all parts.</summary>
internal enum SectionKind
{
    Existence,
    Construction,
    Why,
    Uniqueness,
    Working,
    Check,
    ArithmeticCheck,
    Accuracy,
    AnotherWay,
    WhatIf,
    Mistake,
}
