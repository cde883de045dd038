using System.Text.RegularExpressions;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Charts;
using BrewDeck.Reports.Charts;

namespace BrewDeck.Reports;

/// <summary>A batch's report: its record with the day drawn as curves.</summary>
internal static partial class ReportPage
{
    private const int ShortText = 9, LongestMoment = 24, LongWord = 34;

    public static string Of(RecordSource source)
    {
        var tables = BatchRecord.Of(source);
        return HtmlPage.Of(
            $"Batch {source.Number}: {source.Plan.Recipe.Name}",
            PageStyles.Report,
            Title(source),
            Markup.Tag("div class=\"grid\"", tables.Take(2).Select(Section)),
            Drawings(source),
            Markup.Join(tables.Skip(2).Select(Section)));
    }

    private static Markup Title(RecordSource source) => Markup.Tag("header",
        Markup.Tag("h1", Markup.Tag("bdi", source.Plan.Recipe.Name)),
        Markup.Tag("p class=\"soft\"", $"{source.Notation.Volume(source.Plan.Totals.FermenterL)} on {source.Plan.Brewhouse.Name}, batch {source.Number}, {source.Notation.Date(source.Opened.AtMs)[..10]}"),
        source.State.Rehearsed ? Markup.Tag("p class=\"mark\"", "REHEARSED: no beer was brewed") : Markup.Nothing,
        source.State is { Status: RunStatus.Aborted, ExerciseOver: false } ? Markup.Tag("p class=\"mark\"", "GIVEN UP") : Markup.Nothing);

    private static Markup Drawings(RecordSource source) => Markup.Tag("section",
    [
        Markup.Tag("h2", "The day"),
        .. new DayCurves(source.Plan, source.State, null, source.DayStartMs, source.Notation) { Came = source.Came }.All().Where(c => c.Curves.Length > 0).Select((chart, i) => Markup.Tag("figure",
            Markup.Tag("figcaption", $"{chart.Title}, {chart.Unit}: line planned, marks read{(chart.Band is null ? "" : ", bar 80 % band of what came out")}; hours since the first step"),
            DayDrawing.Of(chart, i))),
    ]);

    private static Markup Section(RecordTable table) => Markup.Tag(table.Columns.Length == 4 && table.Rows.Length > 60 ? "section class=\"all\"" : "section",
        Markup.Tag("h2", table.Title),
        Markup.Tag(table.Columns.Length == 0 ? "table class=\"pairs\"" : "table", Wide(table), Head(table), Markup.Tag("tbody", table.Rows.Select(Row))));

    private static Markup Wide(RecordTable table) => table.Wide.Length == 0
        ? Markup.Nothing
        : Markup.Tag("colgroup", table.Columns.Select(c => Markup.Raw(c == table.Wide ? "<col class=\"wide\">" : "<col>")));

    private static Markup Head(RecordTable table) => table.Columns.Length == 0
        ? Markup.Nothing
        : Markup.Tag("thead", Markup.Tag("tr", table.Columns.Select(c => Markup.Tag("th", c))));

    private static Markup Row(System.Collections.Immutable.ImmutableArray<string> row) =>
        Markup.Tag("tr", row.Select(cell => Markup.Tag(Cell(cell), Markup.Tag("bdi", Together(cell)))));

    /// <summary>A number and its unit stay on one line.</summary>
    private static string Together(string text) => NumberAndUnit().Replace(text, "\u00a0");

    [GeneratedRegex(@"(?<=\d) (?=(?:°[CF]|L|gal|kg|g|lb|oz|h|min|s|%|EBC|SRM|IBU|kW|W)\b|°[CF]|%)")]
    private static partial Regex NumberAndUnit();

    /// <summary>A time or an amount stays on one line; a word without end is broken rather than let out of its page.</summary>
    private static string Cell(string text) =>
        text.Length <= ShortText || (text.Length <= LongestMoment && !text.Contains(' ', StringComparison.Ordinal)) ? "td class=\"short\"" : text.Split(' ').Max(word => word.Length) > LongWord ? "td class=\"long\"" : "td";
}
