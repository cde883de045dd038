using BrewDeck.Core.Fermenting;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Alarms;
using BrewDeck.Logbook;

namespace BrewDeck.SystemTests.Reports;

/// <summary>A real day whose every name is hostile, with something typed into each kind of event.</summary>
internal static class HostileDay
{
    public const string Text =
        "</title></style></td><script>alert(1)</script><img src=x onerror=alert(1)>\"'&amp;=1+1\u001b[31m\u202eelA\u2066\r\n\u0007\u009b2J\u2028end";

    /// <summary>As a spreadsheet would run it.</summary>
    public const string Formula = "=HYPERLINK(\"http://x\",\"Ale\")\u001b]0;t\u0007\u202e";

    /// <summary>Given up in its last step.</summary>
    public static IReadOnlyList<RunEvent> GivenUp(IReadOnlyList<RunEvent> day, string text)
    {
        var at = day[^1].AtMs;
        return
        [
            .. Of(day, text).SkipLast(1),
            new StepHeld(at, ((StepFinished)day[^1]).StepId, text),
            new NoteWritten(at + 1000, text),
            new AlarmRaised(at + 2000, new Alarm(AlarmKind.HandsLate, text, 3, 0)),
            new Undone(at + 3000, day.Count),
            new RunAborted(at + 4000, text),
            new BeerTasted(at + 5000, text, 3),
        ];
    }

    public static IReadOnlyList<RunEvent> Finished(IReadOnlyList<RunEvent> day, string text)
    {
        var at = day[^1].AtMs;
        return
        [
            .. Of(day, text),
            new NoteWritten(at + 1000, text),
            new FermenterRead(at + 2000, new FermenterReading(FermenterFigure.Gravity, 1.012, text)),
            new DateSet(at + 3000, new DueItem(DueKind.Addition, text, at + 86_400_000)),
            new AdditionMade(at + 4000, new DatedAddition(text, 3, text)),
            new BeerTasted(at + 5000, text, 3),
        ];
    }

    /// <summary>A real day as far as its middle, which goes on.</summary>
    public static IReadOnlyList<RunEvent> Running(IReadOnlyList<RunEvent> day, string text) =>
    [
        .. Of(day, text).Take(day.Count / 2).Select(e => e is BatchOpened opened ? opened with { Rehearsed = false, Card = null } : e),
        new NoteWritten(day[day.Count / 2].AtMs, text),
    ];

    public static List<TapeLine> Lines(IReadOnlyList<RunEvent> events)
    {
        TapeLine? last = null;
        return [.. events.Select(e => last = TapeLine.After(last, EventCodec.Encode(e)))];
    }

    private static IEnumerable<RunEvent> Of(IReadOnlyList<RunEvent> day, string text) =>
        day.Skip(1).Select(e => e is ReadingTaken r ? r with { Reading = r.Reading with { AsTyped = text } } : e).Prepend(Named((BatchOpened)day[0], text));

    private static BatchOpened Named(BatchOpened opened, string text)
    {
        var (plan, recipe, house) = (opened.Plan, opened.Plan.Recipe, opened.Plan.Brewhouse);
        return opened with
        {
            Brewer = text,
            ProgramVersion = text,
            Plan = plan with
            {
                Recipe = recipe with
                {
                    Name = text,
                    Grist = [.. recipe.Grist.Select(g => g with { Name = text })],
                    Hops = [.. recipe.Hops.Select(h => h with { Name = text })],
                    Rests = [.. recipe.Rests.Select(r => r with { Name = text })],
                },
                Brewhouse = house with { Name = text, Vessels = [.. house.Vessels.Select(v => v with { Name = text })] },
                Steps = [.. plan.Steps.Select(s => s with { Spec = s.Spec with { Label = s.Spec.Label.Length > 0 ? text : "", Charges = [.. s.Spec.Charges.Select(c => c with { Name = text })] } })],
            },
        };
    }
}
