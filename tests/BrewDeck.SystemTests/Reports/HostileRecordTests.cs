using BrewDeck.Deck.Wording;
using BrewDeck.Reports;

namespace BrewDeck.SystemTests.Reports;

/// <summary>Whatever was typed, a page holds its own markup only, and a text nothing that a terminal obeys.</summary>
[Collection(nameof(RehearsedLogbook))]
public sealed class HostileRecordTests(RehearsedLogbook logbook)
{
    private readonly RecordSource _source = RecordSource.Of(1, HostileDay.Lines(HostileDay.GivenUp(logbook.Events(), HostileDay.Text)), Notation.Metric);

    [Fact]
    public void Past_midnight_a_time_has_its_date()
    {
        long day = _source.DayStartMs, next = day + 24 * 3_600_000L;
        Assert.Matches("^[0-9]{2}:[0-9]{2}:[0-9]{2}$", _source.Clock(day));
        Assert.Matches("^[0-9]{2}:[0-9]{2}$", _source.Minute(day));
        Assert.Equal($"{Notation.Metric.Local(next):yyyy-MM-dd} {_source.Clock(day)}", _source.Clock(next));
        Assert.Equal($"{Notation.Metric.Local(next):yyyy-MM-dd} {_source.Minute(day)}", _source.Minute(next));
    }

    [Fact]
    public void A_report_holds_no_markup_of_the_brewers()
    {
        var page = ReportPage.Of(_source);
        var root = PageReading.Parse(page);
        PageReading.AssertPlain(page);
        Assert.Contains("<script>alert(1)</script>", root.Descendants("h1").Single().Value, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", page, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("default-src 'none'", page, StringComparison.Ordinal);
    }

    [Fact]
    public void So_does_a_run_sheet()
    {
        var page = RunSheetPage.Of(_source.Plan, Notation.Metric);
        PageReading.Parse(page);
        PageReading.AssertPlain(page);
        Assert.DoesNotContain("<script", page, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void The_record_as_text_obeys_nothing()
    {
        foreach (var line in RecordText.Of(BatchRecord.Of(_source)))
        {
            PageReading.AssertPlain(line);
            Assert.DoesNotContain('\n', line);
        }
    }

    [Fact]
    public void Json_for_a_terminal_is_ascii_and_says_the_same()
    {
        var json = System.Text.Json.JsonSerializer.Serialize(HostileDay.Text, new System.Text.Json.JsonSerializerOptions { Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping });
        var ascii = JsonAscii.Of(json);
        Assert.All(ascii, c => Assert.InRange(c, ' ', '~'));
        Assert.Equal(HostileDay.Text, System.Text.Json.JsonSerializer.Deserialize<string>(ascii));
    }
}
