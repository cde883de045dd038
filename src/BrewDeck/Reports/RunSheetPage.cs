using BrewDeck.Core.Planning;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Reports;

/// <summary>A day's run sheet on paper, with boxes for the times and readings: for a brewhouse too wet for a screen, or a dead one.</summary>
internal static class RunSheetPage
{
    public static string Of(Plan plan, Notation notation) => HtmlPage.Of(
        PlanLines.Heading(plan, notation),
        PageStyles.Sheet,
        Markup.Tag("h1", Markup.Tag("bdi", plan.Recipe.Name)),
        Markup.Tag("p class=\"soft\"", $"{notation.Volume(plan.Totals.FermenterL)} on {plan.Brewhouse.Name}"),
        Markup.Tag("div class=\"top\"", new[] { "Date", "Brewer", "Day began", "Batch no." }.Select(Box)),
        Totals(plan, notation),
        Markup.Tag("div class=\"caution\"", WaterWarnings.Of(plan, notation).Select(w => Markup.Tag("div", $"! {w.Says} {w.Mend}"))),
        Markup.Tag("table",
        [
            Markup.Raw("<colgroup><col class=\"time\"><col><col class=\"blank\"><col class=\"blank\"><col class=\"reads\"></colgroup>"),
            Markup.Tag("thead", Markup.Tag("tr", new[] { "plan", "step", "start", "end", "readings" }.Select(c => Markup.Tag("th", c)))),
            .. PlanLines.Parts(plan).Select(part => Part(part, plan, notation)),
        ]),
        Markup.Tag("h2", "Notes"),
        Markup.Tag("div class=\"lines\"", Markup.Nothing));

    private static Markup Totals(Plan plan, Notation notation) => Markup.Tag("p",
        string.Join("; ", PlanLines.Totals(plan, notation).Select(t => $"{t.Label} {t.Value}")));

    private static Markup Part(PlanPart part, Plan plan, Notation notation) => Markup.Tag("tbody",
    [
        Markup.Tag("tr", Markup.Tag("th class=\"part\" colspan=\"5\"", Names.Sentence(Names.Unit(part.Unit, notation)))),
        .. part.Steps.Select(step => Step(step, plan, notation)),
    ]);

    private static Markup Step(PlanStep step, Plan plan, Notation notation)
    {
        var words = StepWords.Of(step, plan, notation);
        return Markup.Tag("tr",
            Markup.Tag("td", Markup.Tag("div", PlanLines.At(step, plan, notation)), Markup.Tag("div class=\"soft\"", PlanLines.Takes(step, plan))),
            Markup.Tag("td",
                Markup.Tag("div class=\"step\"", Markup.Tag("span class=\"tick\"", Markup.Nothing), words.Title),
                Markup.Tag("div", string.Join(" ", words.Hands)),
                Markup.Tag("div class=\"caution\"", string.Join(" ", words.Cautions.Select(c => "! " + c)))),
            Markup.Tag("td", Markup.Nothing),
            Markup.Tag("td", Markup.Nothing),
            Markup.Tag("td", Markup.Tag("div class=\"reads\"", step.Expected.SelectMany(e => Reads(e, plan, notation)))));
    }

    private static IEnumerable<Markup> Reads(ExpectedReading expected, Plan plan, Notation notation) =>
    [
        Markup.Tag("div", $"{ReadingWords.What(expected.Kind, expected.Vessel, plan.Brewhouse, notation)} ({ReadingWords.Named(expected.Kind, expected.Value, notation)})"),
        Box(""),
    ];

    private static Markup Box(string label) => Markup.Tag("div class=\"box\"", label);
}
