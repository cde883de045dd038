using BrewDeck.Core.Running;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Running;

public class ShiftsTests
{
    private static readonly Forecast Now = new PerfectDay(Demo.Plan()).Forecast;

    private static Forecast With(Func<Outlook, Outlook> change) => Now with { Outlook = change(Now.Outlook) };

    [Fact]
    public void Nothing_has_moved_between_a_forecast_and_itself() => Assert.Empty(Shifts.Between(Now, Now));

    [Theory]
    [InlineData("original_gravity_sg", 0.0006, true)]
    [InlineData("original_gravity_sg", 0.0004, false)]
    [InlineData("fermenter_l", -0.11, true)]
    [InlineData("fermenter_l", -0.09, false)]
    [InlineData("bitterness_ibu", 0.6, true)]
    [InlineData("bitterness_ibu", 0.4, false)]
    [InlineData("pitch_c", 0.3, true)]
    [InlineData("pre_boil_l", 0.11, true)]
    [InlineData("pre_boil_l", 0.09, false)]
    [InlineData("pre_boil_gravity_sg", -0.0006, true)]
    [InlineData("pre_boil_gravity_sg", -0.0004, false)]
    [InlineData("post_boil_l", 0.11, true)]
    [InlineData("post_boil_l", 0.09, false)]
    [InlineData("colour_ebc", 0.6, true)]
    [InlineData("colour_ebc", 0.4, false)]
    [InlineData("finish_ms", 61_000, true)]
    [InlineData("finish_ms", 59_000, false)]
    public void A_figure_is_told_when_a_brewer_would_notice(string figure, double by, bool told)
    {
        Figure Moved(Figure f) => f with { P50 = f.P50 + by };
        var after = With(o => figure switch
        {
            "original_gravity_sg" => o with { OriginalGravitySg = Moved(o.OriginalGravitySg) },
            "fermenter_l" => o with { FermenterL = Moved(o.FermenterL) },
            "bitterness_ibu" => o with { BitternessIbu = Moved(o.BitternessIbu) },
            "pre_boil_l" => o with { PreBoilL = Moved(o.PreBoilL) },
            "pre_boil_gravity_sg" => o with { PreBoilGravitySg = Moved(o.PreBoilGravitySg) },
            "post_boil_l" => o with { PostBoilL = Moved(o.PostBoilL) },
            "colour_ebc" => o with { ColourEbc = Moved(o.ColourEbc) },
            "pitch_c" => o with { PitchC = Moved(o.PitchC) },
            _ => o with { FinishMs = Moved(o.FinishMs) },
        });
        var shifts = Shifts.Between(Now, after);
        Assert.Equal(told ? [figure] : [], shifts.Select(s => s.Figure));
        if (told)
            Assert.Equal(by, shifts[0].After - shifts[0].Before, 1e-6);
    }

    [Fact]
    public void A_target_that_the_plant_decides_is_told_by_its_step()
    {
        var strike = Now.Rest.First(s => s.Spec.Id == "liquor.heat-strike");
        var after = Now with { Rest = Now.Rest.Replace(strike, strike with { TargetC = strike.TargetC + 0.4 }) };
        Assert.Equal("target_c:liquor.heat-strike", Assert.Single(Shifts.Between(Now, after)).Figure);
    }
}
