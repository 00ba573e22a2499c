namespace Explain.Generators.Tests.Wording;

public class WordingCheckTests
{
    private static readonly Sample Good = Sample.Of("""
        using Explain;
        namespace Demo;
        [Rule("alternate-angles", When = ["parallel: PQ is parallel to RS"], Then = "angle PQR = angle QRS", Roles = ["transversal: QR"], Source = "Elements I.29")]
        internal static partial class Angles
        {
            [Phrase("shares")] public static partial Phrase Shares(int n, Expr area, Items<Point> corners);
            [Phrase("shares.look")] public static partial Phrase Look(Expr area);
        }
        """)
        .With("uk.wording.yaml", """
            # comment
            alternate-angles: alternate angles, {parallel}, {transversal}, by {steps|one=step|other=steps} {steps}
            alternate-angles.look: "look: where {parallel} meets {transversal}"

            shares: "{n} {n|one=share|other=shares} of {area} at {{{corners}}}, said \"fair\\even\""
            shares.look: share it out
            """)
        .With("us.wording.yaml", "shares: \"{n} {n|one=part|other=parts} of {area}, {corners}\"\n");

    [Fact]
    public void Good_files_are_silent() => Good.Run().Compiles();

    [Fact]
    public void Line_endings_byte_order_mark_and_missing_last_newline_change_nothing()
    {
        string windows = "\uFEFF" + Good.Wordings["uk.wording.yaml"].Replace("\n", "\r\n", StringComparison.Ordinal);
        Good.With("uk.wording.yaml", windows).Run().Compiles();
        Good.With("uk.wording.yaml", windows + "\r\nshares.x: y").Run()
            .Says("EXPL203 uk.wording.yaml(7) [shares.x: y]: no phrase or rule is called shares.x; did you mean shares?");
    }

    [Theory]
    [InlineData("alternate-angles: ", "EXPL202 Test.cs(3) [Rule(\"alternate-angles\", When…]: the rule alternate-angles has no wording; paste this line into uk.wording.yaml: alternate-angles: \"… {parallel} {transversal}\"")]
    [InlineData("shares: ", "EXPL202 Test.cs(6) [Shares]: the phrase shares has no wording; paste this line into uk.wording.yaml: shares: \"… {n} {area} {corners}\"")]
    [InlineData("shares.look: ", "EXPL202 Test.cs(7) [Look]: the phrase shares.look has no wording; paste this line into uk.wording.yaml: shares.look: \"… {area}\"")]
    public void A_line_taken_out_is_asked_for(string start, string says)
    {
        IEnumerable<string> lines = Good.Wordings["uk.wording.yaml"].Split('\n').Where(l => !l.StartsWith(start, StringComparison.Ordinal));
        Good.With("uk.wording.yaml", string.Join('\n', lines)).Run().Says(says);
    }

    [Fact]
    public void An_unknown_id_offers_the_nearest_where_the_files_are_whole()
    {
        Sample more = Good.With("us.wording.yaml", "# two lines\nalternate-angels: x {parallel}\n");
        more.Run().Says("EXPL203 us.wording.yaml(2) [alternate-angels: x {parallel}]: no phrase or rule is called alternate-angels; did you mean alternate-angles?");
        (more with { Whole = false }).Run().Says();
    }

    [Fact]
    public void A_project_without_wording_files_needs_none() =>
        (Good with { Wordings = Good.Wordings.Clear() }).Run().Compiles();

    [Fact]
    public void A_placeholder_must_be_supplied_and_count_where_it_chooses() => Good
        .Edit("uk.wording.yaml", "share it out", "share {erea} and {area|one=a|other=b} of {area|thing}").Edit("uk.wording.yaml", "{transversal}, by", "{line}, by").Run().Says(
            "EXPL204 uk.wording.yaml(2) [alternate-angles: alternate a…]: alternate-angles does not supply {line}: supplied are parallel, transversal, steps",
            "EXPL204 uk.wording.yaml(6) [shares.look: share {erea} and…]: shares.look does not supply {area|thing}: area is no object of the figure, so the story has no name for it",
            "EXPL204 uk.wording.yaml(6) [shares.look: share {erea} and…]: shares.look does not supply {area|…}: area is no count, so it cannot choose singular or plural",
            "EXPL204 uk.wording.yaml(6) [shares.look: share {erea} and…]: shares.look does not supply {erea}: supplied are area",
            "EXPL208 uk.wording.yaml(6) [shares.look: share {erea} and…]: the hint shares.look holds the value {area}; an early hint says where to look, without a digit or a value");

    [Fact]
    public void A_condition_must_be_mentioned_in_every_reason() => Good
        .With("us.wording.yaml", "alternate-angles: alternate angles\nalternate-angles.again: so again\nalternate-angles.title: Alternate angles\n").Run().Says(
            "EXPL205 us.wording.yaml(1) [alternate-angles: alternate a…]: the wording of alternate-angles does not mention its condition {parallel}, so a reader could be in doubt; place it",
            "EXPL205 us.wording.yaml(2) [alternate-angles.again: so ag…]: the wording of alternate-angles.again does not mention its condition {parallel}, so a reader could be in doubt; place it");

    [Fact]
    public void Words_of_the_other_English_are_found() => Good.With("words.wording.yaml", "metre: meter\nsine rule: law of sines\n")
        .Edit("uk.wording.yaml", "share it out", "Metres by the sine rule, not a parameter").With("us.wording.yaml", "shares: metre\n")
        .Edit("uk.wording.yaml", "of {area} at", "in meters at").Run().Says(
            "EXPL207 uk.wording.yaml(5) [shares: \"{n} {n|one=share|oth…]: 'meter' is not a word of this English: write 'metre'",
            "EXPL207 uk.wording.yaml(6) [shares.look: Metres by the si…]: 'metre' is not a word of this English: a US reader would get it, because no US file words shares.look; paste there: shares.look: \"Metres by the sine rule, not a parameter\" with 'meter'",
            "EXPL207 uk.wording.yaml(6) [shares.look: Metres by the si…]: 'sine rule' is not a word of this English: a US reader would get it, because no US file words shares.look; paste there: shares.look: \"Metres by the sine rule, not a parameter\" with 'law of sines'",
            "EXPL207 us.wording.yaml(1) [shares: metre]: 'metre' is not a word of this English: write 'meter'");

    [Fact]
    public void An_early_hint_gives_no_digit_away() => Good.Edit("uk.wording.yaml", "share it out", "try 3").Run()
        .Says("EXPL208 uk.wording.yaml(6) [shares.look: try 3]: the hint shares.look holds a digit; an early hint says where to look, without a digit or a value");

    [Theory]
    [InlineData("no colon here", "write the line as 'id: text'")]
    [InlineData("shares:", "write the line as 'id: text'")]
    [InlineData("Shares: x", Ids.Form)]
    [InlineData("shares: {n} shares", "put the text in double quotes, with \\\" and \\\\ inside, when it begins with a sign or holds ': ' or ' #'")]
    [InlineData("shares: a: b", "put the text in double quotes, with \\\" and \\\\ inside, when it begins with a sign or holds ': ' or ' #'")]
    [InlineData("shares: \"open", "put the text in double quotes, with \\\" and \\\\ inside, when it begins with a sign or holds ': ' or ' #'")]
    [InlineData("shares: \"a\\n\"", "put the text in double quotes, with \\\" and \\\\ inside, when it begins with a sign or holds ': ' or ' #'")]
    [InlineData("shares: open {n", "write placeholders as {name}, {name|thing}, {name|line}, {name|1}, {name|2} or {name|one=…|other=…}, and braces themselves as {{ and }}")]
    [InlineData("shares: x {n|one=a}", "write placeholders as {name}, {name|thing}, {name|line}, {name|1}, {name|2} or {name|one=…|other=…}, and braces themselves as {{ and }}")]
    [InlineData("shares: x {n|prop}", "write placeholders as {name}, {name|thing}, {name|line}, {name|1}, {name|2} or {name|one=…|other=…}, and braces themselves as {{ and }}")]
    [InlineData("shares: closed } n", "write placeholders as {name}, {name|thing}, {name|line}, {name|1}, {name|2} or {name|one=…|other=…}, and braces themselves as {{ and }}")]
    public void A_line_that_cannot_be_read_says_how_to_write_it(string line, string says) =>
        Good.With("us.wording.yaml", line).Run().Says($"EXPL213 us.wording.yaml(1) [{line}]: {says}");

    [Fact]
    public void A_file_must_be_named_after_an_English() => Good.With("au.wording.yaml", "# nothing\n").Run()
        .Says("EXPL213 au.wording.yaml(1) []: au.wording.yaml: the name must begin with its English, uk or us");

    [Fact]
    public void Two_wordings_in_one_English_are_one_too_many() => Good.With("uk.more.wording.yaml", "shares.look: look there\n").Run()
        .Says("EXPL214 uk.wording.yaml(6) [shares.look: share it out]: shares.look has two wordings in one English: here and at uk.more.wording.yaml(1,1); take one out");

    [Fact]
    public void An_id_is_used_once() => Good.With("Other.cs", """
        using Explain;
        namespace Demo;
        internal static partial class More
        {
            [Phrase("shares")] public static partial Phrase Shares(int n, Expr area, Items<Point> corners);
            [Phrase("alternate-angles")] public static partial Phrase Twice(int parallel, int transversal, int steps);
        }
        """).Run().Says(
            "EXPL201 Test.cs(3) [Rule(\"alternate-angles\", When…]: the id alternate-angles is used twice: here and at Other.cs(6,63); give one of them another id",
            "EXPL201 Test.cs(6) [Shares]: the id shares is used twice: here and at Other.cs(5,53); give one of them another id");
}
