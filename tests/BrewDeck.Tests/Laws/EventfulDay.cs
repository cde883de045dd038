using BrewDeck.Core.Running;
using BrewDeck.Tests.Planning;
using BrewDeck.Tests.Running;

namespace BrewDeck.Tests.Laws;

/// <summary>A day with everything in it: off readings, remedies, holds, a skip, notes, second thoughts.</summary>
internal static class EventfulDay
{
    private static readonly Lazy<PerfectDay> Brewed = new(Brew0);

    /// <summary>The same day each time, to be looked at or gone on with.</summary>
    public static PerfectDay Brew() => Brewed.Value.Copy();

    private static PerfectDay Brew0()
    {
        var day = new PerfectDay(Demo.Plan());
        day.Read(ReadingKind.Temperature, "source", 14);
        day.RunUntil("liquor.heat-strike");
        day.Wait(4);
        day.ReadOff(ReadingKind.Temperature, "liquor", -1.5);
        day.Accepted(new RunCommand.Write("tank slower than usual"));
        day.RunUntil("mash.rest-1");
        day.Wait(3);
        day.ReadOff(ReadingKind.Temperature, "tun", -2);
        day.Accepted(new RunCommand.Choose(day.Offers.First(r => r.Kind == RemedyKind.HeatMash)));
        day.GoOn();
        day.Wait(2);
        day.GoOn();
        HoldAWhile(day, "mash.rest-1");
        day.RunUntil("lauter.run");
        day.Wait(15);
        day.ReadOff(ReadingKind.Volume, "kettle", 1.5);
        day.RunPast("lauter.run");
        day.ReadOff(ReadingKind.Gravity, "kettle", -0.004);
        day.Accepted(new RunCommand.Choose(day.Offers[0]));
        day.Accepted(new RunCommand.Undo());
        day.Accepted(new RunCommand.Choose(day.Offers.First(r => r.Kind == RemedyKind.AddExtract)));
        day.RunUntil("boil.boil-1");
        day.Wait(20);
        day.ReadOff(ReadingKind.Volume, "kettle", -1);
        HoldAWhile(day, "boil.boil-1");
        day.Accepted(new RunCommand.Skip("clean.tun", "tomorrow"));
        day.RunPast("cool.cast-out");
        day.ReadOff(ReadingKind.Gravity, "fermenter", 0.001);
        day.RunToEnd();
        return day;
    }

    private static void HoldAWhile(PerfectDay day, string stepId)
    {
        day.Accepted(new RunCommand.Hold(stepId, "telephone"));
        day.Wait(6);
        day.Accepted(new RunCommand.Resume(stepId));
    }
}
