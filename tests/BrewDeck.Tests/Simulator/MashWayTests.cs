using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Simulator.Rehearsing;
using BrewDeck.Simulator.Truth;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Simulator;

/// <summary>The rehearsed mash is raised as the day's choice says, not as the brewhouse usually does.</summary>
public sealed class MashWayTests
{
    private const long StartMs = 1_780_000_000_000;

    private static readonly Brewhouse House = Demo.House with { Coil = new Coil(0.8, 9, 20) };

    [Theory]
    [InlineData(MashHeating.Direct, MashHeating.Coil, false)]
    [InlineData(MashHeating.Coil, MashHeating.Direct, true)]
    [InlineData(MashHeating.Direct, null, true)]
    public void The_tun_is_heated_by_itself_only_where_that_is_chosen(MashHeating usual, MashHeating? chosen, bool heatsItself)
    {
        var house = House with { Habits = House.Habits with { MashHeating = usual } };
        var plan = Demo.Plan(house: house, choices: new DayChoices { MashHeating = chosen });
        var player = new RehearsalPlayer(HiddenTruth.AsProfile(house, plan.Choices), StartMs, 1, [], new Manner(Mends: false));
        var book = new TunWatch(new PaperBook(new BatchOpened(StartMs, plan, "", Rehearsed: true)), player);

        var day = RehearsalRun.Of(book, player);

        Assert.Equal(RehearsalResult.Pitched, day.Ended);
        Assert.Equal(heatsItself, book.TunWasOn);
        Assert.InRange(player.MashOffK, 0, 1.5);
    }

    /// <summary>Looks at the tun's thermostat each time that something is done.</summary>
    private sealed class TunWatch(IRunBook book, RehearsalPlayer player) : IRunBook
    {
        public bool TunWasOn { get; private set; }

        public RunState State => book.State;

        public Decision Submit(RunCommand command, long nowMs)
        {
            TunWasOn |= !double.IsNaN(player.Plant["tun"].SetC);
            return book.Submit(command, nowMs);
        }
    }
}
