using System.Globalization;
using System.Text;
using BrewDeck.Core.Planning;

namespace BrewDeck.Deck.Wording;

/// <summary>A plan as text to read or print.</summary>
public static class PlanText
{
    public static string Plain(Plan plan) => Plain(plan, Notation.Metric);

    public static string Plain(Plan plan, Notation notation)
    {
        var text = new StringBuilder();
        foreach (var line in PlanLines.Of(plan, notation))
            text.Append(line).Append('\n');
        return text.ToString();
    }

    public static string Markdown(Plan plan) => Markdown(plan, Notation.Metric);

    public static string Markdown(Plan plan, Notation notation)
    {
        var text = new StringBuilder($"# {Cell(PlanLines.Heading(plan, notation))}\n\n");
        foreach (var total in PlanLines.Totals(plan, notation))
            text.Append(CultureInfo.InvariantCulture, $"- {total.Label}: {total.Value}\n");
        foreach (var part in PlanLines.Parts(plan))
            Table(text, part, plan, notation);
        text.Append(CultureInfo.InvariantCulture, $"\n## {notation.Text("Limits")}\n\n");
        foreach (var limit in plan.Limits)
            text.Append(CultureInfo.InvariantCulture, $"- {LimitWords.Of(limit, notation)}\n");
        return text.ToString();
    }

    private static void Table(StringBuilder text, PlanPart part, Plan plan, Notation notation)
    {
        text.Append(CultureInfo.InvariantCulture, $"\n## {Names.Sentence(Names.Unit(part.Unit, notation))}\n\n");
        text.Append(notation.Text("| at | takes | step | hands | cautions |")).Append("\n| --- | --- | --- | --- | --- |\n");
        foreach (var step in part.Steps)
        {
            var words = StepWords.Of(step, plan, notation);
            text.Append(CultureInfo.InvariantCulture, $"| {PlanLines.At(step, plan, notation)} | {PlanLines.Takes(step)} | {Cell(words.Title)} | {Cell(string.Join(" ", words.Hands))} | {Cell(string.Join(" ", words.Cautions))} |\n");
        }
    }

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal);
}
