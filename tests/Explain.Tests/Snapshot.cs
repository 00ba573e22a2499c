using System.Runtime.CompilerServices;

namespace Explain.Tests;

/// <summary>
/// Compares a text with the one kept beside the test, Name.verified.ext. A difference writes Name.received.ext and fails; with
/// EXPLAIN_ACCEPT=1 it takes the old one's place.
/// </summary>
internal static class Snapshot
{
    public static void Verify(string text, string name, string extension = "md", [CallerFilePath] string test = "")
    {
        string path = Path.Combine(Path.GetDirectoryName(test)!, name);
        string verified = $"{path}.verified.{extension}", received = $"{path}.received.{extension}";
        if (Environment.GetEnvironmentVariable("EXPLAIN_ACCEPT") == "1") File.WriteAllText(verified, text);
        string kept = File.Exists(verified) ? File.ReadAllText(verified).ReplaceLineEndings("\n") : "";
        if (kept == text)
        {
            File.Delete(received);
            return;
        }

        File.WriteAllText(received, text);
        Assert.Fail($"{Path.GetFileName(verified)} differs from {Path.GetFileName(received)} at line {FirstDifference(kept, text)}; look at both, and rename the second when it is right.");
    }

    private static int FirstDifference(string kept, string text) =>
        1 + kept.Split('\n').Zip(text.Split('\n')).TakeWhile(p => p.First == p.Second).Count();
}
