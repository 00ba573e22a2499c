namespace Explain;

/// <summary>How many: a count in digits.</summary>
internal sealed record CountRun(int Is) : Inline
{
    public string Text => Is.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
