namespace Explain.Tests.Reading;

/// <summary>Each code of reading, statements and values, with every way to it.</summary>
public sealed class CodeTests
{
    private const string Figure = "figure: ABC is a triangle\n";
    private const string Given = "given: {AB: 3 cm}\n";
    private const string Find = "find: BC\n";

    public static TheoryData<string, string> Rows => new()
    {
        { "", "1: the file is empty | begin with lines such as topic: solve a triangle, figure: ABC is a triangle [unreadable-file]" },
        { "# nothing\n", "1: the file is empty | begin with lines such as topic: solve a triangle, figure: ABC is a triangle [unreadable-file]" },
        { "{}", "1: the file is empty | begin with lines such as topic: solve a triangle, figure: ABC is a triangle [unreadable-file]" },
        { Figure + "given: {AB: 3 cm\nfind: [\n", "2: this is not YAML | check brackets, quotes, colons and indentation here and on the line before [unreadable-file]" },
        { Figure + "title: Part 2: a pond\n" + Find, "2: this is not YAML | put a text that holds a colon and a space in double quotes [unreadable-file]" },
        { Figure + Find + "title: a\u0007b\n", "3: a control character stands here | delete it [unreadable-file]" },
        { Figure + "given:\n\tAB: 3 cm\n" + Find, "3: a tab stands in the indentation | indent with spaces [unreadable-file]" },
        { Figure + "given: &g {AB: 3 cm}\n" + Find, "2: the anchor &g is not allowed in a problem file | leave it out [not-allowed-here]" },
        { Figure + Find + "title: *g\n", "3: the alias *g is not allowed in a problem file | write the value out [not-allowed-here]" },
        { Figure + Find + "title: !!str 3\n", "3: a tag is not allowed in a problem file | leave it out [not-allowed-here]" },
        { "%TAG !e! tag:example.com,2000:\n---\n" + Figure + Find, "1: a directive is not allowed in a problem file | leave it out [not-allowed-here]" },
        { Figure + "given: {<<: {AB: 3 cm}}\n" + Find, "2: the merge key << is not allowed in a problem file | write the value out [not-allowed-here]" },
        { Figure + Find + "---\n" + Figure, "3: a second document begins here | put each problem in a file of its own [not-allowed-here]" },
        { Figure + Find + "title: x\ntitle: y\n", "4: title stands twice: it is also on line 3 | keep one of them [duplicate-key]" },
        { Figure + Find + "title: " + new string('x', 10_001) + "\n", "3: a text is longer than the limit of 10 000 characters | a program may raise this limit; a problem file may not [too-large]" },
        { Figure + Find + "assume: [" + string.Concat(Enumerable.Repeat("x,", 201)) + "]\n", "3: there are more than 200 entries | a program may raise this limit; a problem file may not [too-large]" },
        { "figure: [A…Z is a regular 26-gon, A′ is on AB]\nfind: AB\n", "1: the figure has 27 points, more than the limit of 26 | a program may raise this limit; a problem file may not [too-large]" },
        { Figure + "given: {AB: 1e400 cm}\n" + Find, "2: 1e400 cm: a number has at most 30 digits | [too-large]" },
        { Figure + Find + "whatever: 3\n", "3: whatever is not a key | keys: topic, figure, given, find, title, question, parts, names, assume, method, scale, tolerance, accuracy, round, marks [unknown-key]" },
        { Figure + "find: {a: AB, c: BC}\n", "2: c is not the next letter of find | letter the parts a, b, c and so on, in order [unknown-key]" },
        { Figure + "find: {a: AB}\nmarks: {b: 3}\n", "3: find has no part b | use the letters of find [unknown-key]" },
        { Figure + Find + "round: {edges: exact}\n", "3: edges is not a key | keys: lengths, areas, angles, ratios [unknown-key]" },
        { Find + Given, "1: figure is missing | say how the points lie, such as figure: ABC is a triangle [missing-key]" },
        { Figure + "find:\n", "2: find is missing | say what is wanted, such as find: AB [missing-key]" },
        { "[AB, BC]\n", "1: a problem file is a map of keys | begin with lines such as topic: solve a triangle, figure: ABC is a triangle [wrong-shape]" },
        { Figure + "given: [AB, 3 cm]\n" + Find, "2: given is a list, but it must be a map | write, for example, given: {AB: 9.5 cm} [wrong-shape]" },
        { Figure + "find: [[BC]]\n", "2: find is a list, but it must be a text [wrong-shape]" },
        { Figure + "given: {AB: [3 cm]}\n" + Find, "2: AB is a list, but it must be a text [wrong-shape]" },
        { Figure + Find + "title: {a: b}\n", "3: title is a map, but it must be a text | write, for example, title: A prop on a rail [wrong-shape]" },
        { "figure: ABC is a triangel\n" + Find, "1: “ABC is a triangel” is not a statement that can be read | the nearest that can be read is: ABC is a triangle [unreadable-statement]" },
        { Figure + "given: {angel ABC: 3°}\n" + Find, "2: angel ABC is not a quantity that can be read | the nearest that can be read is: angle ABC [unreadable-statement]" },
        { Figure + "find: number of triangels\n", "2: “number of triangels” is not a thing to find that can be read | the nearest that can be read is: number of triangles [unreadable-statement]" },
        { Figure + "find: prove AB equals BC\n", "2: “AB equals BC” is not a statement that can be read | the nearest that can be read is: AB = BC [unreadable-statement]" },
        { Figure + Find + "method: sin rule\n", "3: sin rule is not a method | did you mean sine rule? [unreadable-statement]" },
        { Figure + Find + "round: about\n", "3: about is not a rule for rounding | write, for example, 3 significant figures, 1 decimal place, nearest inch, exact, or exact, 3 significant figures [unreadable-statement]" },
        { Figure + Find + "scale: small\n", "3: small is not a scale | write 1 cm to 10 m, or 1:1000 [unreadable-statement]" },
        { "figure: ABCD is a square\ngiven: {first cut: anywhere}\nfind: cuts\n", "2: “anywhere” is not a statement that can be read | write a corner, such as A, or a point on a side, such as on AB, 3 cm from A [unreadable-statement]" },
        { Figure + "given: {AD: 3 cm}\n" + Find, "2: AD: there is no point D in the figure (points: A, B and C) | did you mean AC? If D is a new point, say in figure where it is [unknown-point]" },
        { Figure + Find + "names: {X: the tree}\n", "3: X: there is no point X in the figure (points: A, B and C) | did you mean C? If X is a new point, say in figure where it is [unknown-point]" },
        { "figure: ABCD is a square\ngiven: {first cut: E}\nfind: cuts\n", "2: E: there is no point E in the figure (points: A, B, C and D) | did you mean D? If E is a new point, say in figure where it is [unknown-point]" },
        { Figure + "find: [BC,\n CB]\n", "3: CB is asked for twice: it is also on line 2 | ask for it once [found-twice]" },
        { Figure + "find: {a: cuts, b: cuts}\n", "2: cuts is asked for twice: it is also on line 2 | ask for it once [found-twice]" },
        { Figure + "given: {AB: \"12,500 m\"}\n" + Find, "2: 12,500 m: thousands are written without a comma in a problem file | write 12500 m [unreadable-number]" },
        { Figure + "given: {AB: long}\n" + Find, "2: long is not a value that can be read | write a number and a unit, such as 9.5 cm, 75° or (2x + 16)° [unreadable-number]" },
        { Figure + "given: {AB: }\n" + Find, "2: there is no value here | write a number and a unit, such as 9.5 cm, 75° or (2x + 16)° [unreadable-number]" },
        { Figure + Find + "accuracy: 1 m and 2 m\n", "3: 1 m and 2 m says two things of one kind | write how far a length and an angle may be off, such as 0.5 m and 0.5° [given-twice]" },
        { "figure: ABCD is a square\ngiven: {shares: [3, 3]}\nfind: cuts\n", "2: 3 shares are asked for twice | keep one of them [given-twice]" },
        { Figure + "given: {height: 3 cm}\n" + Find, "2: height is not a quantity that can be read | quantities: AB, angle ABC, reflex angle ABC, the distance from T to PQ, the bearing of B from A, the area of A…C, the perimeter of A…C, half the perimeter of A…C, the radius of the inscribed circle of A…C, the radius of the circle through A…C, the diameter of the circle through A…C, the radius of the circle, the circumference of the circle [unreadable-statement]" },
        { Figure + "given: {AB: 5' 3\"}\n" + Find, "2: 5' 3\" is an angle, but AB is a length | did you mean 5 ft 3 in? [wrong-unit]" },
        { "figure: ABCD is a square\ngiven: {share: 7}\nfind: cuts\n", "2: share is not a quantity that can be read | did you mean shares? [unreadable-statement]" },
        { "figure: hello\n" + Find, "1: “hello” is not a statement that can be read | write a statement such as ABC is a triangle, D is on AB, PQ ∥ RS or BA = BC [unreadable-statement]" },
        { Figure + "given: {AB: 120 metrs}\n" + Find, "2: 120 metrs: metrs is not a unit | did you mean 120 metres? [unknown-unit]" },
        { Figure + "find: {a: AB}\nmarks: {a: many}\n", "3: many is not a whole number | write a whole number without a unit, 1 or more [unreadable-number]" },
        { Figure + "find: {a: AB}\nmarks: {a: 5000}\n", "3: 5000 is more than the limit of 1000 | a program may raise this limit; a problem file may not [too-large]" },
        { Figure + "find: {a: AB}\nmarks: {a: 2.5}\n", "3: 2.5 is not a whole number | write a whole number without a unit, 1 or more [unreadable-number]" },
        { Figure + "given: {AB: 0 cm}\n" + Find, "2: AB: 0 cm is not more than 0 | write a number that is more than 0 [not-positive]" },
        { Figure + "given: {AB: -3 cm}\n" + Find, "2: AB: -3 cm is not more than 0 | write a number that is more than 0 [not-positive]" },
        { Figure + "given: {AB: (1 - √2) cm}\n" + Find, "2: AB: (1 - √2) cm is not more than 0 | write a number that is more than 0 [not-positive]" },
        { "figure: ABCD is a square\ngiven: {shares: 0}\nfind: cuts\n", "2: 0 is not 1 or more | write a whole number without a unit, 1 or more [not-positive]" },
        { Figure + Find + "accuracy: 0 m\n", "3: 0 m is not more than 0 | write a number that is more than 0 [not-positive]" },
        { Figure + "given: {AB: 3}\n" + Find, "2: AB: 3 has no unit | write a unit, such as 3 cm [missing-unit]" },
        { Figure + "given: {CA: 3 ft, AB: 3}\n" + Find, "2: AB: 3 has no unit | did you mean 3 ft? [missing-unit]" },
        { Figure + "given: {angle ABC: 2x + 16}\n" + Find, "2: angle ABC: 2x + 16 has no unit | did you mean (2x + 16)°? [missing-unit]" },
        { Figure + "given: {AB: 3√2 cm ± 0.1 cm}\n" + Find, "2: AB: 3√2 cm is not a number that was measured, so it cannot have a ± | write the measured number as a decimal, or leave out the ± [unreadable-number]" },
        { Figure + "given: {AB: 3 cm ± 0.1}\n" + Find, "2: AB: ± 0.1 has no unit | write a unit, such as ± 0.1 cm [missing-unit]" },
        { "figure: tether at O\ngiven: {tether: 9}\nfind: region\n", "2: tether: 9 has no unit | write a unit, such as 9 cm [missing-unit]" },
        { Figure + "given: {AB: 62°}\n" + Find, "2: 62° is an angle, but AB is a length | write a length, such as 62 m. An angle has three letters, such as angle ABC [wrong-unit]" },
        { Figure + "given: {area of ABC: 6 m}\n" + Find, "2: 6 m is a length, but area of ABC is an area | write 6 m² [wrong-unit]" },
        { Figure + "given: {AB: 6 m^2}\n" + Find, "2: 6 m^2 is an area, but AB is a length | write 6 m [wrong-unit]" },
        { Figure + Find + "round: {angles: nearest inch}\n", "3: nearest inch does not fit angles | write, for example, 3 significant figures, 1 decimal place, nearest inch, exact, or exact, 3 significant figures [wrong-unit]" },
        { Figure + "given: {AB: 9 cn}\n" + Find, "2: 9 cn: cn is not a unit | did you mean 9 cm? [unknown-unit]" },
        { Figure + "given: {AB: 9 parsecs}\n" + Find, "2: 9 parsecs: parsecs is not a unit | units: mm, cm, m, km, in, ft, yd, mi, °, ′, ″, and squares of lengths, such as cm² [unknown-unit]" },
        { Figure + "given:\n  angle ABC: 30°\n  angle CBA: 40°\n" + Find, "4: angle CBA = 40°, but angle ABC = 30° on line 3. angle ABC and angle CBA are the same angle [given-twice]".Replace(" [", " | keep one of them [", StringComparison.Ordinal) },
        { Figure + "given: {angle ABC: 200°}\n" + Find, "2: angle ABC: 200°, but an angle named by three points is less than 180° | if you mean the larger angle on the other side, write reflex angle ABC [impossible-angle]" },
        { Figure + "given: {angle ABC: 180°}\n" + Find, "2: angle ABC: 180°, but an angle named by three points is less than 180° | if A, B and C are in line, say so in figure [impossible-angle]" },
        { Figure + "given: {angle ABC: -5°}\n" + Find, "2: angle ABC: -5°, but every angle is more than 0° | check the angle [impossible-angle]" },
        { Figure + "given: {reflex angle ABC: 100°}\n" + Find, "2: reflex angle ABC: 100°, but a reflex angle is more than 180° and less than 360° | check the angle [impossible-angle]" },
        { Figure + "given: {bearing of B from A: 360°}\n" + Find, "2: bearing of B from A: 360° is not a bearing | a bearing is 000° or more and less than 360°, clockwise from north [impossible-angle]" },
    };

    /// <summary>Codes that only solving finds, besides those of the bad files.</summary>
    public static TheoryData<string, string> Solved => new()
    {
        { ErrorCodes.UnknownTopic, "topic: juggling\n" + Figure + Given + Find },
        { ErrorCodes.WhichTopic, Figure + "given: {AB: 3 cm, angle ABC: 40°, angle BCA: 60°}\n" + Find },
        { ErrorCodes.ArrangementNotFixed, "topic: tether\nfigure:\n  - ABCD is a rectangle\n  - tether at P, inside ABCD\ngiven: {AB: 7 m, BC: 4 m, tether: 3 m}\nfind: region\n" },
        { ErrorCodes.NotSupported, "topic: solve a triangle\n" + Figure + "given: {AB: 3 cm}\nfind: cuts\n" },
    };

    [Theory]
    [MemberData(nameof(Solved))]
    public void Each_code_of_solving_is_refused_with_it(string code, string text) =>
        Assert.Equal([code], Assert.IsType<Refused>(new Solver().Solve(TestFile.Read(text))).Errors.Select(e => e.Code));

    [Theory]
    [MemberData(nameof(Rows))]
    public void Each_fault_is_said_once_on_its_line(string text, string said) => Assert.Equal([said.Replace(" | [", " [", StringComparison.Ordinal)], TestFile.Said(TestFile.Read(text)));

    [Fact]
    public void Each_code_of_reading_statements_values_and_geometry_has_a_text_that_yields_it()
    {
        string[] read = [.. Rows.Select(r => ((string)r[1]).Split('[')[^1].TrimEnd(']')).Distinct()], solved = [.. Solved.Select(r => (string)r[0])], files = [.. TestFile.Bad.Select(b => b.Code)];
        Assert.Empty(ErrorCodes.All.TakeWhile(c => c != ErrorCodes.TooFewSteps).Except(read).Except(solved).Except(files));
        Assert.Equal(ErrorCodes.All.Count, ErrorCodes.All.Concat(ErrorCodes.Warnings).Distinct().Count() - ErrorCodes.Warnings.Count);
    }

    [Theory]
    [InlineData("P, S, T are in line", "angle QPS", "angle QPT")]
    [InlineData("S is on PT", "angle QPT", "angle QPS")]
    [InlineData("T is on PS produced", "angle SPQ", "angle QPT")]
    [InlineData("S is the midpoint of PT", "angle SPQ", "angle QPT")]
    [InlineData("PT and QS meet at X", "angle XPQ", "angle QPT")]
    public void One_angle_under_two_names_is_given_twice(string says, string first, string again)
    {
        string[] codes = TestFile.Codes($"figure: [PQT is a triangle, \"{says}\", \"PQS is a triangle\"]\ngiven: {{{first}: 30°, {again}: 30°}}\nfind: PQ\n");
        Assert.Equal([ErrorCodes.GivenTwice], codes);
    }

    [Fact]
    public void An_unknown_topic_is_said_with_all_other_errors_in_the_order_of_the_lines()
    {
        Refused refused = Assert.IsType<Refused>(new Solver().Solve(TestFile.Read("titel: x\ntopic: solve a traingle\n" + Figure + Find + "scale: small\n")));
        Assert.Equal([(1, ErrorCodes.UnknownKey), (2, ErrorCodes.UnknownTopic), (5, ErrorCodes.UnreadableStatement)], refused.Errors.Select(e => (e.Lines[0], e.Code)));
        Assert.EndsWith("did you mean solve a triangle? [unknown-topic]", TestFile.Said(refused.Errors[1]), StringComparison.Ordinal);
    }

    [Fact]
    public void One_angle_under_two_names_is_asked_for_twice() =>
        Assert.Equal([ErrorCodes.FoundTwice], TestFile.Codes("figure: [PQT is a triangle, S is on PT]\nfind: [angle QPT, angle SPQ]\n"));

    [Fact]
    public void A_cosine_may_be_negative() => Assert.Empty(TestFile.Codes(Figure + "given: {cos ABC: -0.5, sin BCA: 0.5}\n" + Find));

    [Fact]
    public void An_angle_on_the_other_side_of_its_corner_is_another()
    {
        Assert.Empty(TestFile.Codes("figure: [\"P, S, T are in line\", PQS is a triangle]\ngiven: {angle PSQ: 30°, angle TSQ: 150°, angle QPS: 20°}\nfind: PQ\n"));
    }

    [Fact]
    public void What_another_error_explains_is_not_said()
    {
        Assert.Equal([ErrorCodes.UnreadableStatement], TestFile.Codes("figure: [ABC is a triangle, D is upon AB]\ngiven: {AD: 3 cm}\nfind: [CD, BD]\n"));
        Assert.Equal([ErrorCodes.UnknownKey], TestFile.Codes("figur: ABC is a triangle\ngiven: {AD: 3 cm}\nfind: CD\n"));
        Assert.Equal([ErrorCodes.WrongShape], TestFile.Codes("figure: {ABC: triangle}\nfind: CD\n"));
        Assert.Equal([ErrorCodes.UnreadableNumber], TestFile.Codes(Figure + "given:\n  AB: 9,5 cm\n  BA: 9 cm\n" + Find));
    }
}
