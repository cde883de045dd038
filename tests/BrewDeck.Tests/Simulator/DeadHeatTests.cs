using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Troubles;
using BrewDeck.Simulator.Plant;
using BrewDeck.Simulator.Rehearsing;
using BrewDeck.Simulator.Truth;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Simulator;

/// <summary>A rehearsed day on which an element goes dead for good and the brewer takes the way that the deck offers.</summary>
public sealed class DeadHeatTests
{
    private const long StartMs = 1_780_000_000_000;

    private static (RehearsalResult Day, RehearsalPlayer Player) Played(string step, double minutes, string vessel, RemedyKind kind)
    {
        var plan = Demo.Plan();
        var book = new PaperBook(new BatchOpened(StartMs, plan, "test", Rehearsed: true));
        var player = new RehearsalPlayer(HiddenTruth.AsProfile(plan.Brewhouse, plan.Choices), StartMs);
        void Do(RunCommand command)
        {
            var decision = book.Submit(command, player.NowMs);
            player.Answered(command, decision);
            if (decision is Decision.Accepted accepted)
                player.Happened(accepted.Events, book.State);
        }
        while (book.State.Step(step)!.Status == RunStatus.Idle)
            Do(player.Next(book.State, StartMs + 86_400_000)!);
        var deadMs = player.NowMs + (long)(60_000 * minutes);
        while (player.Next(book.State, deadMs) is { } command)
            Do(command);
        player.Plant.Faults.Elements(vessel, 0);
        Do(new RunCommand.Report(new(TroubleKind.ElementFailed, Trouble.Element(vessel, 1))));
        Do(new RunCommand.Choose(Remedies.For(book.State, player.NowMs).First(r => r.Kind == kind)));
        Assert.Equal(kind, book.State.Remedies[^1].Remedy.Kind);
        return (RehearsalRun.Of(book, player), player);
    }

    [Theory]
    [InlineData("boil.heat", 0.5)]
    [InlineData("boil.boil-1", 15)]
    public void Wort_of_a_dead_kettle_is_boiled_in_the_tank_and_comes_into_the_fermenter(string step, double minutes)
    {
        var (day, player) = Played(step, minutes, "kettle", RemedyKind.BoilElsewhere);
        Assert.Equal(RehearsalResult.Pitched, day.Ended);
        var (truth, plan, plant) = (day.Truth, day.Final.Plan!.Totals, player.Plant);
        // its bitterness says that it has boiled as long as it should, its gravity that the steam has left it
        Assert.Equal(plan.BitternessIbu, truth.BitternessIbu, 3.0);
        Assert.Equal(plan.OriginalGravitySg, truth.OriginalGravitySg, 0.003);
        Assert.Equal(plan.FermenterL, truth.FermenterL, 2.0);
        Assert.InRange(plant["kettle"].ColdL, 0, 1.5);
        Assert.InRange(Math.Abs(plant.WaterResidualKg) + Math.Abs(plant.DryResidualKg), 0, 1e-9);
    }

    [Fact]
    public void What_is_drained_is_in_the_ledger_and_the_outlet_keeps_the_rest()
    {
        var plant = new VirtualPlant(Quayside.Exact());
        plant.AddWater(Quayside.Liquor, 12, 80);
        plant.Advance(120);
        plant.Drain(Quayside.Liquor);
        Assert.Equal(1.5, plant[Quayside.Liquor].ColdL, 0.05);
        Assert.Equal(0, plant.WaterResidualKg, 1e-9);
        Assert.InRange(plant.HeatResidualJ, -1, 1);
    }

    [Theory]
    [InlineData(RemedyKind.Infuse, 76)]
    [InlineData(RemedyKind.RestOn, 66)]
    public void A_mash_whose_tun_is_dead_is_infused_or_rests_on(RemedyKind kind, double celsius)
    {
        var (day, _) = Played("mash.ramp-2", 0.5, "tun", kind);
        Assert.Equal(RehearsalResult.Pitched, day.Ended);
        Assert.Equal(day.Final.Plan!.Totals.OriginalGravitySg, day.Truth.OriginalGravitySg, 0.003);
        var vorlauf = day.Final.Step("lauter.vorlauf")!;
        var read = day.Final.Readings.Last(r => r.Reading is { Kind: ReadingKind.Temperature, Vessel: "tun" } && r.AtMs <= vorlauf.EndedMs);
        Assert.Equal(celsius, read.Reading.Value, 3.0);
    }
}
