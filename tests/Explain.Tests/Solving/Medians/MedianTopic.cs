namespace Explain.Tests.Solving.Medians;

/// <summary>A topic of a user's own: its relations, its phrases and their words, and nothing else.</summary>
internal static class MedianTopic
{
    public const string Words = """
        length-of-a-median: "four times the square of a median is twice the squares of the sides beside it less the square of the side that it halves: {median} halves {halved} in triangle {triangle}"
        cosine-rule-to-a-midpoint: "cosine rule with half of {halved}, since {middle}: {median} is opposite {between}"
        medians.plan: find {medians} from the three sides
        medians.straight: the edges are straight
        """;

    public const string AmericanWords = """
        cosine-rule-to-a-midpoint: "law of cosines with half of {halved}, since {middle}: {median} is opposite {between}"
        """;

    public const string Starter = """
        topic: medians
        figure: [PQR is a triangle, M is the midpoint of PQ]
        given: {PQ: 8 cm, QR: 7 cm, RP: 5 cm}
        find: RM
        """;

    public static Topic Topic { get; } = new(new("medians"), Starter)
    {
        Accepts = problem => problem.Figure.Any(f => f.Says is Place { Kind: PlaceKind.Midpoint }) && problem.Find.All(g => g.Wanted is Length),
        Rules = [MedianRules.LengthOfAMedian, MedianRules.CosineRuleToAMidpoint],
        Working = [new(MedianRules.LengthOfAMedian, 1, Targets: 1)],
        Checks = [new(MedianRules.CosineRuleToAMidpoint, 1, Targets: 1), new(RuleBook.Standard["cosine-rule"], 2), new(RuleBook.Standard["angle-from-cosine"], 0.5, Targets: 1)],
        Assumptions = [MedianPhrases.Straight()],
        Plan = problem => [new(MedianPhrases.Plan([.. problem.Find.Select(g => g.Wanted!)]), null)],
    };

    public static Solver Solver { get; } = new(new SolverOptions { Topics = Topics.Standard.With(Topic) });

    public static Renderer Renderer(English english) =>
        new(new RendererOptions { English = english, Wording = english == English.UnitedKingdom ? [Words] : [Words, AmericanWords] });
}
