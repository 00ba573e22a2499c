using System.Text.Json;

namespace Explain;

/// <summary>The members of a solved problem's JSON object: warnings, assumptions and answers.</summary>
internal sealed class SolvedJson(Utf8JsonWriter json, Solution solution, Renderer renderer)
{
    public void Write()
    {
        json.WriteBoolean("verified", solution.Verification.Ran);
        json.WriteString("outcome", "solved");
        json.WriteStartArray("assumed");
        foreach (string assumed in solution.Of.Assume) json.WriteStringValue(assumed);
        json.WriteEndArray();
        json.WriteStartArray("warnings");
        foreach (Warning warning in solution.Warnings) Write(warning);
        json.WriteEndArray();
        json.WriteStartArray("answers");
        foreach (Part part in solution.Parts)
        {
            foreach (Answer answer in part.Answers) Write(part, answer);
        }

        json.WriteEndArray();
    }

    private void Write(Warning warning)
    {
        json.WriteStartObject();
        json.WriteString("code", warning.Code);
        json.WriteString("message", renderer.Say(warning.Message));
        json.WriteEndObject();
    }

    private void Write(Part part, Answer answer)
    {
        json.WriteStartObject();
        json.WriteString("find", answer.For.AsTyped);
        json.WriteString("part", part.Letter);
        json.WriteStartArray("values");
        foreach (AnswerValue value in answer.Values) Write(value);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private void Write(AnswerValue value)
    {
        json.WriteStartObject();
        json.WriteString("case", value.Case);
        json.WriteString("item", value.Item);
        json.WriteString("text", value.Value is null ? Claim(value.From) : renderer.Say(value));
        Number(value);
        Ends(value);
        json.WriteEndObject();
    }

    private string Claim(ClaimId id) =>
        solution.Premises.Concat<Claimed>(solution.Steps).FirstOrDefault(c => c.Id == id) is { } claim ? renderer.Say(claim.Says, solution) : "";

    private void Number(AnswerValue value)
    {
        if (value.Value is not { } found)
        {
            foreach (string member in (string[])["number", "unit", "exact", "round"]) json.WriteNull(member);
            return;
        }

        Rounding rule = AnswerText.RoundingOf(value, found);
        Value shown = found.In(rule.UnitFor(found.Unit));
        json.WriteNumber("number", shown.Number);
        json.WriteString("unit", shown.Unit.Symbol);
        json.WriteString("exact", shown.Exact?.ToString());
        json.WriteString("round", renderer.Say(RoundingNote.Say(found.Exact is null ? rule.ForDecimals(found.Unit) : rule)));
    }

    private void Ends(AnswerValue value)
    {
        if (value.Bounds is not { } bounds)
        {
            json.WriteNull("bounds");
            return;
        }

        (string lower, string upper) = renderer.Ends(value);
        json.WriteStartObject("bounds");
        End("lower", lower, bounds.Lower, value);
        End("upper", upper, bounds.Upper, value);
        json.WriteEndObject();
    }

    private void End(string member, string text, Value end, AnswerValue value)
    {
        json.WriteStartObject(member);
        json.WriteString("text", text);
        json.WriteNumber("number", end.In(AnswerText.RoundingOf(value, end).UnitFor(end.Unit)).Number);
        json.WriteEndObject();
    }
}
