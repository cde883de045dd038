using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;

namespace BrewDeck.Tests.Planning;

public class RecipeScalingTests
{
    private static readonly Brewhouse Wasteful = Demo.House with
    {
        Name = "wasteful",
        Habits = Demo.House.Habits with { ConversionYield = 0.82, EvaporationKgPerH = 3, MashThicknessLPerKg = 2.7 },
    };

    [Fact]
    public void On_the_same_brewhouse_nothing_changes()
    {
        var same = Scale(Demo.House, Demo.House, KeptFigures.All);

        Assert.All(same.Old.Recipe.Grist.Zip(same.New.Recipe.Grist), p => Assert.Equal(p.First.MassKg, p.Second.MassKg, 5e-5));
        Assert.Equal(KeptFigures.All, same.Kept);
    }

    [Fact]
    public void Without_anything_kept_masses_go_with_the_litres()
    {
        var half = Scale(Demo.House, Wasteful, KeptFigures.None, 20);

        Assert.All(half.Old.Recipe.Grist.Zip(half.New.Recipe.Grist), p => Assert.Equal(p.First.MassKg / 2, p.Second.MassKg, 1e-9));
        Assert.All(half.Old.Recipe.Hops.Zip(half.New.Recipe.Hops), p => Assert.Equal(p.First.MassG / 2, p.Second.MassG, 1e-9));
        Assert.True(half.New.Day.Totals.OriginalGravitySg < half.Old.Day.Totals.OriginalGravitySg - 0.003);
    }

    /// <summary>Worked by the equations of the reference tables: extract balance, utilisation and Morey's colour (topics 03, 05 and 06).</summary>
    [Fact]
    public void A_wasteful_brewhouse_takes_the_malt_that_its_own_yield_asks_for()
    {
        var moved = Scale(Demo.House, Wasteful, KeptFigures.All, 30);
        var (old, New) = (moved.Old, moved.New);

        var extractKg = 30 * SugarSolution.ExtractKgPerL(SugarSolution.PlatoFromSg(1.048), 20);
        Assert.Equal(Extract.GrainKg(extractKg, 1, New.EfficiencyFraction), New.Recipe.Grist.Sum(g => g.ExtractKg), 0.001);
        Assert.True(New.EfficiencyFraction < old.EfficiencyFraction - 0.08);
        // more pale malt, and less than that of the coloured: the colour of one litre is to stay
        double Pale(ScaledSide s) => s.Recipe.Grist[0].MassKg / s.Recipe.BatchL;
        double Dark(ScaledSide s) => s.Recipe.Grist[1].MassKg / s.Recipe.BatchL;
        Assert.InRange(Pale(New) / Pale(old), 1.1, 1.3);
        Assert.InRange(Dark(New) / Dark(old), 0.8, 1.05);
        Assert.Equal(old.Day.Totals.ColourEbc, New.Day.Totals.ColourEbc, 1e-3);
        Assert.Equal(3.0, New.Day.Totals.StrikeWaterL / New.Recipe.MashKg, 1e-6);
        Assert.Equal(30, New.Day.Totals.BitternessIbu, 1e-3);
    }

    [Fact]
    public void A_brewhouse_twice_as_large_in_everything_takes_twice_of_everything()
    {
        var twice = Scale(Demo.House, Twice(Demo.House), KeptFigures.All, 80);

        Assert.All(twice.Old.Recipe.Grist.Zip(twice.New.Recipe.Grist), p => Assert.Equal(2, p.Second.MassKg / p.First.MassKg, 2e-3));
        Assert.All(twice.Old.Recipe.Hops.Zip(twice.New.Recipe.Hops), p => Assert.Equal(2, p.Second.MassG / p.First.MassG, 2e-2));
    }

    [Fact]
    public void One_malt_cannot_keep_gravity_and_colour_at_once_and_that_is_told()
    {
        var pale = Demo.Amber with { Grist = [Demo.Amber.Grist[0]] };

        var moved = RecipeScaling.Of(Demo.House, Wasteful, pale, KeptFigures.All, new DayChoices(), 40)!;

        Assert.Equal(KeptFigures.Colour, moved.Missed);
        Assert.Equal(1.048, moved.New.Day.Totals.OriginalGravitySg, 1e-6);
    }

    [Fact]
    public void Where_nothing_is_sparged_the_ratio_is_what_it_is()
    {
        var day = new DayChoices { Sparge = SpargeMethod.None };

        var moved = RecipeScaling.Of(Demo.House, Wasteful, Demo.Amber, KeptFigures.All, day, 20)!;

        Assert.True(moved.Missed.HasFlag(KeptFigures.Ratio));
        Assert.False(moved.Missed.HasFlag(KeptFigures.Gravity));
    }

    private static Scaling Scale(Brewhouse from, Brewhouse to, KeptFigures keep, double? batchL = null) =>
        RecipeScaling.Of(from, to, Demo.Amber, keep, new DayChoices(), batchL)!;

    private static Brewhouse Twice(Brewhouse house) => house with
    {
        Vessels = [.. house.Vessels.Select(v => v with
        {
            CapacityL = 2 * v.CapacityL,
            HeadroomL = 2 * v.HeadroomL,
            DeadSpaceL = 2 * v.DeadSpaceL,
            HeatCapacityJPerK = 2 * v.HeatCapacityJPerK,
            LossWPerK = 2 * v.LossWPerK,
            DiameterM = v.DiameterM * Math.Sqrt(2),
            FalseBottom = v.FalseBottom is { } f ? f with { RatedLoadKg = 2 * f.RatedLoadKg } : null,
            Elements = [.. v.Elements.Select(e => e with { PowerW = 2 * e.PowerW, CoverL = 2 * e.CoverL })],
        })],
        Circuits = [.. house.Circuits.Select(c => c with { Amps = 2 * c.Amps })],
        Pumps = [.. house.Pumps.Select(p => p with { FlowLPerMin = 2 * p.FlowLPerMin })],
        Chiller = house.Chiller with { UaWPerK = 2 * house.Chiller.UaWPerK, WaterLPerMin = 2 * house.Chiller.WaterLPerMin, WortLPerMin = 2 * house.Chiller.WortLPerMin },
        Fermenter = house.Fermenter with { CapacityL = 2 * house.Fermenter.CapacityL, HeadspaceL = 2 * house.Fermenter.HeadspaceL },
        Habits = house.Habits with
        {
            RunoffLPerMin = 2 * house.Habits.RunoffLPerMin,
            EvaporationKgPerH = 2 * house.Habits.EvaporationKgPerH,
            TrubL = 2 * house.Habits.TrubL,
            LineLossL = 2 * house.Habits.LineLossL,
            FillLPerMin = 2 * house.Habits.FillLPerMin,
        },
    };
}
