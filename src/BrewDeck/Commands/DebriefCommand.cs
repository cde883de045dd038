using System.CommandLine;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Wording;
using BrewDeck.Logbook;
using BrewDeck.Simulator.Rehearsing;

namespace BrewDeck.Commands;

/// <summary><c>brewdeck debrief</c>: a rehearsed batch looked back at.</summary>
internal static class DebriefCommand
{
    public static Command Of(Func<ParseResult, Workplace> place, Option<UnitSystem> units)
    {
        var batch = new Argument<int>("batch") { Description = "Number of a rehearsed batch, see \"log list --rehearsed\"." };
        var json = new Option<bool>("--json") { Description = "As one line of JSON." };
        var command = new Command("debrief", "Looks back at a rehearsed batch: each mishap, what was done, what the choice cost.") { batch, json };
        command.SetAction(p => Run(place(p), p.GetValue(batch), p.GetValue(json), p.GetValue(units)));
        return command;
    }

    private static int Run(Workplace place, int batch, bool json, UnitSystem units) => place.Guard(() =>
    {
        using var journal = place.OpenReader();
        if (journal.List().FirstOrDefault(h => h.Number == batch) is not { } head)
            return place.Say($"batch {batch}: is not in the logbook; \"brewdeck log list --rehearsed\" says which are", ExitCode.Refused);
        // looking back brews the day again: not for one that goes on
        if (head is { Rehearsed: true, Status: not (RunStatus.Complete or RunStatus.Aborted) })
            return place.Say($"batch {batch}: its day is not over; \"brewdeck rehearse\" goes on with it", ExitCode.Refused);
        var events = journal.Read(batch);
        if (Debriefing.Of(events) is not { } debrief)
            return place.Say($"batch {batch}: was not rehearsed, or was before rehearsals had debriefs; give a batch of \"brewdeck rehearse\"", ExitCode.Refused);
        if (json)
            place.Output.WriteLine(DebriefJson.Of(batch, debrief));
        else
            Write(place, batch, debrief, events, units);
        return ExitCode.Done;
    });

    private static void Write(Workplace place, int batch, Core.Rehearsing.Debrief debrief, IReadOnlyList<RunEvent> events, UnitSystem units)
    {
        var day = RunFold.Of(events);
        place.Output.WriteLine($"debrief of batch {batch}");
        foreach (var line in DebriefWords.Lines(debrief, day, Forecasts.At(day, events[^1].AtMs).Outlook, new Notation(units, TimeZoneInfo.Local)))
            place.Output.WriteLine(SafeText.OneLine(line.ToString()).TrimEnd());
    }
}
