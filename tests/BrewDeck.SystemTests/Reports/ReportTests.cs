using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using BrewDeck.Core.Running;
using BrewDeck.Logbook;
using BrewDeck.Profiles;
using BrewDeck.SystemTests.Logbook;
using BrewDeck.SystemTests.Profiles;

namespace BrewDeck.SystemTests.Reports;

/// <summary>Report, record and recipe of a day that the program brewed itself.</summary>
[Collection(nameof(RehearsedLogbook))]
public sealed partial class ReportTests(RehearsedLogbook logbook)
{
    [Fact]
    public void The_page_has_every_step_reading_and_event_and_says_that_it_was_rehearsed()
    {
        var (events, state) = Day();
        var page = PageReading.Parse(logbook.Run("log", "report", "1").Output);
        Assert.Equal(state.Steps.Length, Rows("Steps"));
        Assert.Equal(state.Readings.Length, Rows("Readings"));
        Assert.Equal(events.Count, Rows("Every event"));
        Assert.Contains("REHEARSED", page.Value, StringComparison.Ordinal);
        Assert.Contains("the tester", page.Value, StringComparison.Ordinal);

        int Rows(string title) => page.Descendants("section").Single(s => s.Element("h2")?.Value == title).Descendants("tbody").Elements("tr").Count();
    }

    [Fact]
    public void What_was_read_stands_beside_what_is_reckoned_and_all_that_went_in_has_its_row()
    {
        var (_, state) = Day();
        var page = PageReading.Parse(logbook.Run("log", "report", "1").Output);
        var read = state.Readings.Last(r => r.Reading is { Kind: ReadingKind.Volume, Vessel: "fermenter" }).Reading.Value;

        Assert.Contains(Rows("Planned, and what came out"), r => r[0] == "into the fermenter" && r[2] == $"{read.ToString("0.0", System.Globalization.CultureInfo.InvariantCulture)} L");
        var went = Rows("What went in");
        Assert.All(state.Steps.Where(s => s.Spec.Kind is BrewDeck.Core.Planning.StepKind.DoughIn or BrewDeck.Core.Planning.StepKind.AddToBoil).SelectMany(s => s.Spec.Charges), c => Assert.Contains(went, r => r[1] == c.Name));
        Assert.All(went.Where(r => r[1] == "water" && r[4].StartsWith("Fill", StringComparison.Ordinal)), r => Assert.Matches(@"L, level (read [0-9.]+ L|not read)$", r[2]));
        Assert.Contains(went, r => r[1] == "water");
        Assert.Equal("not weighed", Assert.Single(went, r => r[1] == state.Plan!.Recipe.Yeast.Name)[2]);

        List<List<string>> Rows(string title) => [.. page.Descendants("section").Single(s => s.Element("h2")?.Value == title).Descendants("tbody").Elements("tr").Select(r => r.Elements("td").Select(d => d.Value.Replace('\u00a0', ' ')).ToList())];
    }

    [Fact]
    public void Each_chart_has_the_planned_lines_and_a_mark_for_each_reading()
    {
        var state = Day().State;
        var charts = PageReading.Parse(logbook.Run("log", "report", "1").Output).Descendants("figure").ToList();
        ReadingKind[] kinds = [ReadingKind.Temperature, ReadingKind.Volume, ReadingKind.Gravity];
        Assert.Equal(kinds.Length, charts.Count);
        foreach (var (kind, chart) in kinds.Zip(charts))
        {
            // marks are the only shapes filled with the colour of their own edge, planned lines the only ones 1.6 wide
            var marks = chart.Descendants().Count(e => Filled().IsMatch((string?)e.Attribute("style") ?? ""));
            Assert.Equal(state.Readings.Count(r => r.Reading.Kind == kind), marks);
            var lines = chart.Descendants().Where(e => e.Name.LocalName == "polyline" && ((string)e.Attribute("style")!).Contains("stroke-width:1.6", StringComparison.Ordinal));
            Assert.Contains(lines, l => ((string)l.Attribute("points")!).Split(' ').Length > 3);
        }
    }

    [Fact]
    public void The_record_as_text_names_versions_steps_answers_and_the_last_hash()
    {
        var (code, text, _) = logbook.Run("log", "show", "1");
        Assert.Equal(0, code);
        var tape = File.ReadAllLines(Path.Combine(logbook.Path, Tape.NameOf(1)));
        var hash = JsonDocument.Parse(tape[^1]).RootElement.GetProperty("hash").GetString()!;
        Assert.All(
            ["recipe version", "brewhouse version", "program version", "the tester", hash, "Planned, and what came out", "reckoned", "Recipe as fitted", "What went in", "Limits checked", "Every event"],
            word => Assert.Contains(word, text, StringComparison.Ordinal));
        Assert.Equal(tape.Length, text[text.IndexOf("Every event", StringComparison.Ordinal)..text.IndexOf("For checking", StringComparison.Ordinal)].TrimEnd().Split('\n').Length - 2);
    }

    [Fact]
    public void The_recipe_of_what_was_brewed_is_valid_and_has_the_volume_and_gravity_that_came_out()
    {
        var (code, text, _) = logbook.Run("log", "export", "1", "--format", "beerjson");
        Assert.Equal(0, code);
        Assert.True(BeerJsonFiles.IsValid(text));
        var brewed = Assert.Single(BeerJsonReader.Read(text).Recipes);
        var state = Day().State;
        Assert.Equal(state.Ferment.MeasuredOriginalSg!.Value, brewed.OriginalGravitySg!.Value, 4);
        Assert.NotEqual(state.Plan!.Totals.FermenterL, brewed.BatchL, 2);
        Assert.Equal(state.Readings.Last(r => r.Reading is { Kind: ReadingKind.Volume, Vessel: "fermenter" }).Reading.Value, brewed.BatchL, 0.5);
        Assert.Equal(state.Plan.Recipe.Grist.Sum(g => g.MassKg), brewed.Grist.Sum(g => g.MassKg), 6);
    }

    [Fact]
    public void A_report_goes_to_a_file_or_says_why_it_cannot()
    {
        using var folder = new TempFolder();
        Assert.Equal(0, logbook.Run("log", "report", "1", "--out", folder.At("r.html")).Code);
        PageReading.Parse(File.ReadAllText(folder.At("r.html")));
        var (code, _, errors) = logbook.Run("log", "report", "1", "--out", folder.At("nowhere/r.html"));
        Assert.Equal(3, code);
        Assert.Matches("^brewdeck: .*r.html: cannot be written: there is no folder .*nowhere; make it, or give another file\n$", errors);
    }

    [Fact]
    public void The_run_sheet_has_a_box_for_every_reading_that_the_plan_expects()
    {
        using var folder = new TempFolder();
        Assert.Equal(0, logbook.Run("plan", "--sheet", folder.At("sheet.html")).Code);
        var page = PageReading.Parse(File.ReadAllText(folder.At("sheet.html")));
        var boxes = page.Descendants("tbody").Descendants("div").Count(d => (string?)d.Attribute("class") == "box");
        var plan = Day().State.Plan!;
        Assert.Equal(plan.Steps.Sum(s => s.Expected.Length), boxes);
        Assert.Equal(plan.Steps.Length, page.Descendants("span").Count(d => (string?)d.Attribute("class") == "tick"));
    }

    [Fact]
    public void Trends_are_measured_from_the_record_and_read_again_from_their_file()
    {
        var (code, csv, errors) = logbook.Run("log", "trends", "--csv", "--rehearsed");
        Assert.True(code == 0, errors);
        var state = Day().State;
        var row = csv.Split("\r\n")[1].Split(',');
        var names = csv.Split("\r\n")[0].Split(',');
        double Value(string name) => double.Parse(row[Array.IndexOf(names, name)], System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(1000 * (state.Ferment.MeasuredOriginalSg!.Value - state.Plan!.Totals.OriginalGravitySg), Value("gravity_off_points"), 3);
        Assert.InRange(Value("efficiency_percent"), 60, 95);
        Assert.InRange(Value("evaporation_kg_per_h"), 2, 8);
        Assert.InRange(Value("runoff_l_per_min"), 0.5, 3);
        Assert.True(File.Exists(Path.Combine(logbook.Path, FigureCache.Name)));
        Assert.Equal(csv, logbook.Run("log", "trends", "--csv", "--rehearsed").Output);
        Assert.DoesNotContain("Quayside", logbook.Run("log", "trends", "--csv").Output, StringComparison.Ordinal);
        Assert.Contains("too few", logbook.Run("log", "trends", "--rehearsed").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Rehearsed_days_are_kept_apart_unless_asked_for()
    {
        Assert.DoesNotContain("Quayside Amber", logbook.Run("log", "list").Output, StringComparison.Ordinal);
        Assert.Contains("Quayside Amber, Quayside 65, rehearsed", logbook.Run("log", "list", "--rehearsed", "--search", "amber").Output, StringComparison.Ordinal);
        Assert.Contains("from 0 batches", logbook.Run("lessons").Output, StringComparison.Ordinal);
        Assert.Contains("from 1 batch\n", logbook.Run("lessons", "--rehearsed").Output, StringComparison.Ordinal);
    }

    private (IReadOnlyList<RunEvent> Events, RunState State) Day()
    {
        var events = logbook.Events();
        return (events, RunFold.Of(events));
    }

    [GeneratedRegex(@"fill:(rgb\([\d,]+\));stroke:\1")]
    private static partial Regex Filled();
}
