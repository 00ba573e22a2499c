using System.Collections.Frozen;
using System.Globalization;

namespace Explain;

/// <summary>The numbers that a page gives to steps, and which steps use a rule that the page has used before.</summary>
internal sealed class StepNumbers
{
    private readonly FrozenDictionary<ClaimId, int> last;
    private readonly FrozenSet<ClaimId> again;

    public StepNumbers(Items<Section> sections, Detail detail)
    {
        Dictionary<ClaimId, int> numbers = [];
        HashSet<ClaimId> repeated = [];
        HashSet<RuleId> used = [];
        int number = 0;
        foreach (Section section in sections)
        {
            bool counts = PageOrder.IsNumbered(section), isOne = ExistenceBlocks.IsOneStep(section.Passage);
            if (isOne) number++;
            foreach (Step step in section.Passage.Steps)
            {
                if (isOne) Share(step, counts);
                else Visit(step, counts);
            }
        }

        (last, again) = (numbers.ToFrozenDictionary(), repeated.ToFrozenSet());

        void Visit(Step step, bool counts)
        {
            if (!used.Add(step.Why.Rule)) repeated.Add(step.Id);
            if (counts) numbers[step.Id] = number += step is Algebra algebra ? LinesOf(algebra, detail).Count : 1;
            if (step is Series series) foreach (Step cell in series.Rows.SelectMany(r => r.Cells)) Share(cell, counts);
            if (step is Split split) VisitCases(split, counts);
        }

        void VisitCases(Split split, bool counts)
        {
            Items<Case> cases = split.Cases;
            if (Leading.Is(split))
            {
                foreach (Case one in cases) Share(Leading.Value(one), counts);
                number++;
                foreach (Step test in cases.SelectMany(c => Leading.Tests(c))) Share(test, counts);
                cases = Leading.Rest(split);
            }

            if (!Skeleton.IsShared(cases)) { foreach (Step step in cases.SelectMany(c => c.Steps)) Visit(step, counts); return; }
            for (int i = 0; i < cases[0].Steps.Count; i++)
            {
                Visit(cases[0].Steps[i], counts);
                foreach (Case other in cases.Skip(1)) Share(other.Steps[i], counts);
            }
        }

        void Share(Step step, bool counts)
        {
            if (!used.Add(step.Why.Rule)) repeated.Add(step.Id);
            if (counts) numbers[step.Id] = number;
        }
    }

    /// <summary>The number of a step, of an algebra its last line's; null where the page shows none.</summary>
    public string? Of(ClaimId id) => last.TryGetValue(id, out int number) ? number.ToString(CultureInfo.InvariantCulture) : null;

    /// <summary>The number of a line of algebra.</summary>
    public string? OfLine(Algebra algebra, int line, Detail detail) =>
        last.TryGetValue(algebra.Id, out int number) ? (number - LinesOf(algebra, detail).Count + 1 + line).ToString(CultureInfo.InvariantCulture) : null;

    /// <summary>Whether the page has used the step's rule before.</summary>
    public bool IsAgain(ClaimId id) => again.Contains(id);

    /// <summary>The lines of an algebra that a page prints: in brief the equation and its solution.</summary>
    public static Items<EquationLine> LinesOf(Algebra algebra, Detail detail) =>
        detail == Detail.Brief && algebra.Lines.Count > 2 ? [algebra.Lines[0], algebra.Lines[^1]] : algebra.Lines;
}
