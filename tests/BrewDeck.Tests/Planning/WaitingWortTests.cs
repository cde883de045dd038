using BrewDeck.Core.Planning;
using BrewDeck.Core.Planning.Operations;

namespace BrewDeck.Tests.Planning;

/// <summary>What hops give while wort only waits must not hang on how often somebody looks.</summary>
public class WaitingWortTests
{
    private const double HourS = 3600;

    private static readonly PlantSetting Setting = PlantSetting.Of(Demo.House, new DayChoices());

    /// <summary>Heated up to where it is kept, kept hot, left alone on its way down, and cooling to where it is kept.</summary>
    [Theory]
    [InlineData(65, 98)]
    [InlineData(98, 98)]
    [InlineData(98, double.NaN)]
    [InlineData(98, 95)]
    public void Hops_in_a_kettle_give_the_same_in_one_hour_and_in_its_minutes(double fromC, double holdC)
    {
        var whole = Exposed(fromC, holdC, 1);
        var cut = Exposed(fromC, holdC, 60);

        Assert.InRange(whole.BoilMinutes, 5, 60);
        Assert.Equal(cut.BoilMinutes, whole.BoilMinutes, 0.003 * cut.BoilMinutes);
    }

    /// <summary>Nobody puts the lid on because the next step is late.</summary>
    [Fact]
    public void Wort_that_waits_after_the_knock_out_cools_as_it_does_while_it_stands()
    {
        var knockedOut = KnockedOut(60);

        var waited = PlantModel.WaitUntil(Setting, knockedOut, 660).Vessels[Kettle];

        var stood = KnockedOut(660).Vessels[Kettle];
        Assert.Equal(stood.TempC, waited.TempC, 0.001);
        Assert.Equal(stood.WaterKg, waited.WaterKg, 0.0001);
        var covered = knockedOut with { Vessels = knockedOut.Vessels.SetItem(Kettle, knockedOut.Vessels[Kettle] with { Open = false }) };
        Assert.InRange(PlantModel.WaitUntil(Setting, covered, 660).Vessels[Kettle].TempC, waited.TempC + 1, 100);
    }

    [Fact]
    public void A_kettle_is_covered_again_when_its_wort_is_cast_out() =>
        Assert.All(Demo.Plan().Steps.Where(s => s.Spec.Kind == StepKind.CastOut), s => Assert.False(s.After.Vessels[Kettle].Open));

    private static int Kettle => Setting.IndexOf("kettle");

    private static PlantState KnockedOut(double seconds)
    {
        var knockOut = Demo.Plan().Steps.First(s => s.Spec.Kind == StepKind.KnockOut);
        var start = Demo.Plan().Start;
        start = start with { Vessels = start.Vessels.SetItem(Kettle, new VesselState(0, 40, 5, 100)) };
        return PlantModel.After(Setting, knockOut.Spec with { Minutes = seconds / 60, AfterStepId = "" }, start, 0).State;
    }

    private static HopDose Exposed(double fromC, double holdC, int cuts)
    {
        var kettle = Setting.IndexOf("kettle");
        var start = Demo.Plan().Start;
        var wort = new VesselState(0, 40, 5, fromC);
        var bench = new Workbench(Setting, start with { Vessels = start.Vessels.SetItem(kettle, wort), Hops = [new HopDose("first wort", 5, 0.1)] })
        {
            PlugAt = [.. Setting.Circuits.Select(_ => kettle)],
        };
        for (var i = 0; i < cuts; i++)
            bench.Pass(kettle, HourS / cuts, holdC);
        return bench.Hops[0];
    }
}
