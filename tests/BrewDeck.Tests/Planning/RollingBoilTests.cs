using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;

namespace BrewDeck.Tests.Planning;

public class RollingBoilTests
{
    /// <summary>With that much of its heat the kettle steams off what its profile says, and no more.</summary>
    [Fact]
    public void The_share_of_the_heat_gives_the_kettles_own_evaporation()
    {
        var plan = Demo.Plan();
        var setting = PlantSetting.Of(plan.Brewhouse, plan.Choices);
        var boil = plan.Steps.First(s => s.Spec.Kind == StepKind.Boil);
        var kettle = setting.IndexOf(boil.Spec.Vessel);
        var wort = boil.After.Vessels[kettle];
        var share = RollingBoil.HeatShare(setting, boil.Spec.Vessel, wort);
        var left = share * setting.FullHeatW(kettle, Contents.LiquidL(wort)) - setting.LossWPerK(kettle) * (wort.TempC - setting.AmbientC);

        Assert.InRange(share, 0.2, 0.95);
        Assert.Equal(setting.Habits.EvaporationKgPerH, 3600 * Boil.EvaporationKgPerS(left, wort.TempC), 0.02);
    }

    [Fact]
    public void A_kettle_that_is_too_weak_wants_all_of_it()
    {
        var plan = Demo.Plan();
        var setting = PlantSetting.Of(plan.Brewhouse, plan.Choices);
        setting = setting with { Habits = setting.Habits with { EvaporationKgPerH = 50 } };
        var boil = plan.Steps.First(s => s.Spec.Kind == StepKind.Boil);

        Assert.Equal(1, RollingBoil.HeatShare(setting, boil.Spec.Vessel, boil.After.Vessels[setting.IndexOf(boil.Spec.Vessel)]));
    }
}
