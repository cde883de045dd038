using System.Globalization;
using System.Text;
using BrewDeck.Core.Planning;

namespace BrewDeck.Deck.Wording;

/// <summary>A plan as text to read or print.</summary>
public static class PlanText
{
    public static string Plain(Plan plan, Notation notation)
    {
        var text = new StringBuilder();
        foreach (var line in PlanLines.Of(plan, notation, s => Also(s, plan, notation)))
            text.Append(line).Append('\n');
        return text.ToString();
    }

    public static string Markdown(Plan plan, Notation notation)
    {
        var text = new StringBuilder($"# {Cell(PlanLines.Heading(plan, notation))}\n\n");
        foreach (var warning in WaterWarnings.Of(plan, notation))
            text.Append(CultureInfo.InvariantCulture, $"**! {Cell(warning.Says)}** {Cell(warning.Mend)}\n\n");
        foreach (var total in PlanLines.Totals(plan, notation))
            text.Append(CultureInfo.InvariantCulture, $"- {total.Label}: {total.Value}\n");
        foreach (var part in PlanLines.Parts(plan))
            Table(text, part, plan, notation);
        text.Append(CultureInfo.InvariantCulture, $"\n## {notation.Text("Limits")}\n\n");
        foreach (var limit in plan.Limits)
            text.Append(CultureInfo.InvariantCulture, $"- {LimitWords.OnPlan(limit, plan, notation)}\n");
        return text.ToString();
    }

    private static void Table(StringBuilder text, PlanPart part, Plan plan, Notation notation)
    {
        text.Append(CultureInfo.InvariantCulture, $"\n## {Names.Sentence(Names.Unit(part.Unit, notation))}\n\n");
        text.Append(notation.Text("| at | takes | step | hands | cautions |")).Append("\n| --- | --- | --- | --- | --- |\n");
        foreach (var step in part.Steps)
        {
            var words = StepWords.Of(step, plan, notation);
            text.Append(CultureInfo.InvariantCulture, $"| {PlanLines.At(step, plan, notation)} | {PlanLines.Takes(step, plan)} | {Cell(words.Title)} | {Cell(string.Join(" ", words.Hands.Prepend(Also(step, plan, notation)).Where(w => w.Length > 0)))} | {Cell(string.Join(" ", words.Cautions))} |\n");
        }
    }

    /// <summary>A heat-up of minutes looks like a mistake to who does not know that most of it is done by then.</summary>
    private static string Also(PlanStep step, Plan plan, Notation notation)
    {
        if (step.Spec.Kind != StepKind.HeatToBoil || plan.Steps.LastOrDefault(s => s.Spec.Kind.RunsOff()) is not { } ran)
            return "";
        var (kettle, tun) = (Vessel(plan, ran.Spec.To), Vessel(plan, ran.Spec.Vessel));
        return kettle >= 0 && tun >= 0 && ran.After.Vessels[kettle].TempC > ran.After.Vessels[tun].TempC + WarmedK
            ? notation.Text($"From {notation.Target(ran.After.Vessels[kettle].TempC)}: the kettle heats while the wort runs off.")
            : "";
    }

    /// <summary>Less is not worth a word.</summary>
    private const double WarmedK = 3;

    private static int Vessel(Plan plan, string? id) => plan.Brewhouse.Vessels.ToList().FindIndex(v => v.Id == id);

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal);
}
