using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Alarms;
using BrewDeck.Deck.Wording;
using BrewDeck.Logbook;
using BrewDeck.Reports;

namespace BrewDeck.SystemTests.Reports;

/// <summary>Whatever was typed, a page holds its own markup only, and a text nothing that a terminal obeys.</summary>
[Collection(nameof(RehearsedLogbook))]
public sealed class HostileRecordTests(RehearsedLogbook logbook)
{
    private const string Hostile =
        "</title></style></td><script>alert(1)</script><img src=x onerror=alert(1)>\"'&amp;=1+1\u001b[31m\u202eelA\u2066\r\n\u0007\u009b2J\u2028end";

    private readonly RecordSource _source = SourceOf(logbook.Events());

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
        var json = System.Text.Json.JsonSerializer.Serialize(Hostile, new System.Text.Json.JsonSerializerOptions { Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping });
        var ascii = JsonAscii.Of(json);
        Assert.All(ascii, c => Assert.InRange(c, ' ', '~'));
        Assert.Equal(Hostile, System.Text.Json.JsonSerializer.Deserialize<string>(ascii));
    }

    /// <summary>A real day whose every name is hostile, with something typed into each kind of event.</summary>
    private static RecordSource SourceOf(IReadOnlyList<RunEvent> day)
    {
        var at = day[^1].AtMs;
        RunEvent[] events =
        [
            Named((BatchOpened)day[0]),
            .. day.Skip(1).Select(e => e is ReadingTaken r ? r with { Reading = r.Reading with { AsTyped = Hostile } } : e).SkipLast(1),
            new StepHeld(at, ((StepFinished)day[^1]).StepId, Hostile),
            new NoteWritten(at + 1000, Hostile),
            new AlarmRaised(at + 2000, new Alarm(AlarmKind.HandsLate, Hostile, 3, 0)),
            new Undone(at + 3000, day.Count),
            new RunAborted(at + 4000, Hostile),
            new BeerTasted(at + 5000, Hostile, 3),
        ];
        TapeLine? last = null;
        var lines = events.Select(e => last = TapeLine.After(last, EventCodec.Encode(e))).ToList();
        return RecordSource.Of(1, lines, Notation.Metric);
    }

    private static BatchOpened Named(BatchOpened opened)
    {
        var (plan, recipe, house) = (opened.Plan, opened.Plan.Recipe, opened.Plan.Brewhouse);
        return opened with
        {
            Brewer = Hostile,
            ProgramVersion = Hostile,
            Plan = plan with
            {
                Recipe = recipe with
                {
                    Name = Hostile,
                    Grist = [.. recipe.Grist.Select(g => g with { Name = Hostile })],
                    Hops = [.. recipe.Hops.Select(h => h with { Name = Hostile })],
                    Rests = [.. recipe.Rests.Select(r => r with { Name = Hostile })],
                },
                Brewhouse = house with { Name = Hostile, Vessels = [.. house.Vessels.Select(v => v with { Name = Hostile })] },
                Steps = [.. plan.Steps.Select(s => s with { Spec = s.Spec with { Label = s.Spec.Label.Length > 0 ? Hostile : "", Charges = [.. s.Spec.Charges.Select(c => c with { Name = Hostile })] } })],
            },
        };
    }
}
