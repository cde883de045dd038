using BrewDeck.Core.Running;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Running;

public class StatusFoldTests
{
    [Fact]
    public void Says_the_same_as_the_whole_fold_after_every_event_of_a_day()
    {
        var day = new PerfectDay(Demo.Plan());
        day.RunUntil(s => s.Step("mash.rest-1")!.Status == RunStatus.Running);
        day.Do(new RunCommand.Hold("mash.rest-1", "to see"));
        day.Do(new RunCommand.Resume("mash.rest-1"));
        day.Do(new RunCommand.Take(new Reading(ReadingKind.Temperature, "tun", 63, "63")));
        day.Do(new RunCommand.Choose(Remedies.For(day.State, day.NowMs)[0]));
        day.Do(new RunCommand.Undo());
        day.Do(new RunCommand.Skip("lauter.vorlauf", "clear already"));
        day.RunToEnd();
        day.Do(new RunCommand.Write("a good day"));
        for (var n = 1; n <= day.Events.Count; n++)
        {
            var prefix = day.Events.Take(n).ToList();
            Assert.Equal(RunFold.Of(prefix).Status, StatusFold.Of(prefix));
        }
        Assert.Equal(RunStatus.Complete, StatusFold.Of(day.Events));
    }

    [Fact]
    public void An_aborted_day_stays_aborted_and_undo_takes_the_abort_back()
    {
        var day = new PerfectDay(Demo.Plan());
        day.GoOn();
        day.Do(new RunCommand.Abort("power cut"));
        Assert.Equal(RunStatus.Aborted, StatusFold.Of(day.Events));
        day.Do(new RunCommand.Undo());
        Assert.Equal(RunStatus.Running, StatusFold.Of(day.Events));
    }
}
