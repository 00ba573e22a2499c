namespace Explain;

/// <summary>Says of each of the two triangles on which side of the foot of the height its moving corner is.</summary>
internal sealed class Positions(RuleBook book, SwingingSide swinging, Point foot)
{
    /// <summary>The split in which each case that holds says where the corner is, and is named by it.</summary>
    public Split In(Split split, Items<(string Name, Ledger Ledger)> held) => split with { Cases = [.. split.Cases.Select(c => In(c, held.First(h => h.Name == c.Name).Ledger))] };

    private Case In(Case one, Ledger inside)
    {
        Deduce deduce = new(book, inside);
        (string, Point)[] names = [("F", foot), ("T", swinging.Top), ("P", swinging.Start), ("Q", swinging.Moving)];
        Deduction? between = deduce.By("foot-between", names), place = between ?? deduce.By("foot-beyond", names);
        Phrase label = between is null ? TopicPhrases.SecondTriangle(swinging.Moving) : TopicPhrases.FirstTriangle(swinging.Moving);
        int tests = 1 + one.Steps.Skip(1).TakeWhile(s => s is Deduction).Count();
        return one with { Label = new(label, place!.Says), Steps = [.. one.Steps.Take(tests), place, .. Finished([.. one.Steps.Skip(tests)])] };
    }

    private static IEnumerable<Step> Finished(Step[] rest) => rest.Select((s, i) => i == 0 ? s with { Title = TopicPhrases.FinishEachTriangle() } : s);
}
