using Microsoft.CodeAnalysis;

namespace Explain.Generators;

/// <summary>What the generator can say. Each says what is wrong, with the names, and what to write instead.</summary>
internal static class Descriptors
{
    private const string Category = "Explain";

    public static readonly DiagnosticDescriptor NotPartial = new("EXPL001", "The containing type is not partial",
        "{0} must be partial (and not local to a file), so that what belongs to {1} can be written beside it; add 'partial'", Category, DiagnosticSeverity.Error, true);

    public static readonly DiagnosticDescriptor BadStatement = new("EXPL002", "This cannot be explained",
        "'{0}' cannot be explained: {1}", Category, DiagnosticSeverity.Error, true);

    public static readonly DiagnosticDescriptor UnknownCall = new("EXPL003", "This function cannot be explained",
        "{0} is not a listed function; use {1}", Category, DiagnosticSeverity.Error, true);

    public static readonly DiagnosticDescriptor NoReason = new("EXPL004", "A line has no reason",
        "the line of {0} has no reason; end it with a comment that says why", Category, DiagnosticSeverity.Warning, true);

    public static readonly DiagnosticDescriptor OtherUnit = new("EXPL005", "The declared unit is not the calculated one",
        "{0} is declared in {1}, but '{2}' is {3}: {4}", Category, DiagnosticSeverity.Error, true);

    public static readonly DiagnosticDescriptor KindsApart = new("EXPL006", "Different kinds of quantity are put together",
        "'{0}' {1}", Category, DiagnosticSeverity.Error, true);

    public static readonly DiagnosticDescriptor Radians = new("EXPL007", "This function works in radians",
        "{0} works in radians, and angles here are in degrees; use DegreeTrigonometry.{1}", Category, DiagnosticSeverity.Error, true);

    public static readonly DiagnosticDescriptor UnknownUnit = new("EXPL008", "Unknown unit",
        "{0} is no unit of the table{1}", Category, DiagnosticSeverity.Error, true);

    public static readonly DiagnosticDescriptor SymbolTwice = new("EXPL009", "Two quantities have one symbol",
        "the symbol {0} stands for {1} and for {2}; give one of them another symbol", Category, DiagnosticSeverity.Error, true);

    public static readonly DiagnosticDescriptor Circle = new("EXPL010", "Explained methods call each other in a circle",
        "explained methods call each other in a circle: {0}; a formula must end", Category, DiagnosticSeverity.Error, true);

    public static readonly DiagnosticDescriptor BadSignature = new("EXPL011", "The signature cannot be explained",
        "{0} cannot be explained: {1}", Category, DiagnosticSeverity.Error, true);

    public static readonly DiagnosticDescriptor Unused = new("EXPL012", "A local value is not used",
        "the result does not depend on {0}; leave it out, or use it", Category, DiagnosticSeverity.Warning, true);

    public static readonly DiagnosticDescriptor NoConditionReason = new("EXPL013", "A condition has no reason",
        "the condition '{0}' has no reason; end its line with a comment that says why", Category, DiagnosticSeverity.Warning, true);

    public static readonly DiagnosticDescriptor BadReason = new("EXPL014", "A reason names something unknown",
        "{0}", Category, DiagnosticSeverity.Error, true);

    public static readonly DiagnosticDescriptor Square = new("EXPL015", "A square is better written as a product",
        "write '{0}' as '{1} * {1}': it prints the same, and Math.Pow may be off in its last bit", Category, DiagnosticSeverity.Info, true);

    public static readonly DiagnosticDescriptor WholeDivision = new("EXPL016", "A division of whole numbers drops the remainder",
        "'{0}' is not calculated in doubles, so C# drops the remainder and the formula would not; write one number with .0, or cast it to double", Category, DiagnosticSeverity.Error, true);

    public static readonly DiagnosticDescriptor IdTwice = new("EXPL201", "An id is used twice",
        "the id {0} is used twice: here and at {1}; give one of them another id", Category, DiagnosticSeverity.Error, true);

    public static readonly DiagnosticDescriptor NoWording = new("EXPL202", "A phrase has no wording",
        "the {0} {1} has no wording; paste this line into {2}: {3}", Category, DiagnosticSeverity.Error, true);

    public static readonly DiagnosticDescriptor UnknownPhrase = new("EXPL203", "A wording belongs to no phrase",
        "no phrase or rule is called {0}{1}", Category, DiagnosticSeverity.Error, true);

    public static readonly DiagnosticDescriptor UnknownSlot = new("EXPL204", "A placeholder is not supplied",
        "{0} does not supply {{{1}}}: {2}", Category, DiagnosticSeverity.Error, true);

    public static readonly DiagnosticDescriptor ConditionMissing = new("EXPL205", "A condition is not mentioned",
        "the wording of {0} does not mention its condition {{{1}}}, so a reader could be in doubt; place it", Category, DiagnosticSeverity.Error, true);

    public static readonly DiagnosticDescriptor NoSource = new("EXPL206", "A rule has no source",
        "the rule {0} has no source; say where it comes from with Source = \"…\"", Category, DiagnosticSeverity.Warning, true);

    public static readonly DiagnosticDescriptor OtherEnglish = new("EXPL207", "A word of the other English",
        "'{0}' is not a word of this English: {1}", Category, DiagnosticSeverity.Error, true);

    public static readonly DiagnosticDescriptor TellingLook = new("EXPL208", "A hint tells too much",
        "the hint {0} holds {1}; an early hint says where to look, without a digit or a value", Category, DiagnosticSeverity.Error, true);

    public static readonly DiagnosticDescriptor NoMeaning = new("EXPL210", "A rule has no numeric meaning",
        "the rule {0} could not be tested in a figure: {1}", Category, DiagnosticSeverity.Error, true);

    public static readonly DiagnosticDescriptor Unprintable = new("EXPL211", "No wording can place this parameter",
        "phrase {0}: the parameter {1} is of type {2}, which no wording can place; "
        + "use a type that derives from Named, Statement, Expr or Symbol, or ClaimId, int, Phrase, string, or Items<…> of these", Category, DiagnosticSeverity.Error, true);

    public static readonly DiagnosticDescriptor BadDeclaration = new("EXPL212", "The declaration cannot be read",
        "{0} {1}: {2}", Category, DiagnosticSeverity.Error, true);

    public static readonly DiagnosticDescriptor BadLine = new("EXPL213", "A line of a wording file cannot be read",
        "{0}", Category, DiagnosticSeverity.Error, true);

    public static readonly DiagnosticDescriptor WordedTwice = new("EXPL214", "A phrase has two wordings in one English",
        "{0} has two wordings in one English: here and at {1}; take one out", Category, DiagnosticSeverity.Error, true);

    private static readonly Dictionary<string, DiagnosticDescriptor> All = new DiagnosticDescriptor[]
    {
        NotPartial, BadStatement, UnknownCall, NoReason, OtherUnit, KindsApart, Radians, UnknownUnit, SymbolTwice, Circle, BadSignature, Unused,
        NoConditionReason, BadReason, Square, WholeDivision,
        IdTwice, NoWording, UnknownPhrase, UnknownSlot, ConditionMissing, NoSource, OtherEnglish, TellingLook, NoMeaning, Unprintable, BadDeclaration, BadLine, WordedTwice,
    }.ToDictionary(d => d.Id);

    public static IEnumerable<string> Ids => All.Keys;

    public static DiagnosticDescriptor Find(string id) => All[id];
}
