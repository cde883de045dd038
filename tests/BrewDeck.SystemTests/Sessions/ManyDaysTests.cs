using BrewDeck.Rehearsals;

namespace BrewDeck.SystemTests.Sessions;

public class ManyDaysTests
{
    [Fact]
    public void Days_come_in_their_order_whichever_is_over_first()
    {
        using var second = new ManualResetEventSlim();
        int Play(int day)
        {
            if (day == 0)
                Assert.True(second.Wait(TimeSpan.FromMinutes(1)));
            if (day == 1)
                second.Set();
            return 10 * day;
        }

        Assert.Equal([0, 10, 20, 30, 40], ManyDays.Of(5, Play));
    }

    [Fact]
    public void No_more_days_are_begun_than_somebody_takes()
    {
        var begun = 0;

        Assert.Equal(0, ManyDays.Of(1000, day => { Interlocked.Increment(ref begun); return day; }).First());

        Assert.InRange(begun, 1, 2 * Environment.ProcessorCount);
    }

    [Fact]
    public void What_goes_wrong_on_a_day_is_told_as_it_was_thrown()
    {
        var thrown = Assert.Throws<FormatException>(() => ManyDays.Of(3, day => day == 1 ? throw new FormatException("day two") : day).ToList());
        Assert.Equal("day two", thrown.Message);
    }
}
