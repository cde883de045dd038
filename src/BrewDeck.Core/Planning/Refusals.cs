using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Recipes;

namespace BrewDeck.Core.Planning;

/// <summary>Turns what cannot be brewed into refusals, each with what would mend it.</summary>
internal static class Refusals
{
    /// <summary>What can be told before anything is worked out.</summary>
    public static ImmutableArray<Refusal> Beforehand(Brewhouse house, Recipe recipe, DayChoices choices)
    {
        var found = ImmutableArray.CreateBuilder<Refusal>();
        if (recipe.Rests.IsEmpty || recipe.MashKg <= 0)
            found.Add(new(RefusalCode.NoMash, recipe.MashKg, 0, "kg", [new(MendCode.GristToMash, 0, "")]));
        if (choices.Circuits is { } wanted && (wanted < 1 || wanted > house.Circuits.Length))
            found.Add(new(RefusalCode.Circuits, wanted, house.Circuits.Length, "", [new(MendCode.CircuitsInUse, house.Circuits.Length, "")]));
        if (choices.BatchL is { } litres && !(litres > 0))
            found.Add(new(RefusalCode.BatchVolume, litres, 0, "L", [new(MendCode.LargerBatch, 1, "L")]));
        if (!(recipe.BatchL > 0))
            found.Add(new(RefusalCode.BatchVolume, recipe.BatchL, 0, "L", [new(MendCode.LargerBatch, 1, "L")]));
        foreach (var (from, to) in recipe.Rests.Zip(recipe.Rests.Skip(1)))
        {
            if (to.TempC < from.TempC)
                found.Add(new(RefusalCode.RestBelowTheLast, to.TempC, from.TempC, "°C", [new(MendCode.RestsInRisingOrder, from.TempC, "°C")]));
        }
        var way = choices.MashHeating ?? house.Habits.MashHeating;
        // a single rest is kept by the coil too
        if (way == MashHeating.Coil && !CanRaise(house, way))
            found.Add(new(RefusalCode.NoCoil, 0, 1, "", [new(MendCode.MashWithoutCoil, 0, "")]));
        else if (recipe.Rests.Length > 1 && !CanRaise(house, way))
            found.Add(new(RefusalCode.TunCannotHeat, recipe.Rests[1].TempC, recipe.Rests[0].TempC, "°C", [new(MendCode.SingleRest, recipe.Rests[0].TempC, "°C")]));
        return found.ToImmutable();
    }

    /// <summary>The mash can be taken from rest to rest in this way.</summary>
    private static bool CanRaise(Brewhouse house, MashHeating way) => way switch
    {
        MashHeating.Direct => house.MashTun.IsHeated,
        MashHeating.Coil => house.Coil is not null && house.HotLiquorTank != house.MashTun,
        MashHeating.Decoction => house.Kettle != house.MashTun,
        _ => house.HotLiquorTank != house.MashTun,
    };

    /// <summary>One refusal for each limit that fails.</summary>
    public static ImmutableArray<Refusal> Of(PlantSetting setting, Batch batch, ImmutableArray<Limit> failed, MendSearch search) =>
        [.. failed.Select(l => new Refusal(l.Name, l.Value, l.Bound, l.Unit, Mends(setting, batch, l, search)))];

    /// <summary>What has been tried and helps first, then what the brewer can do to the plant.</summary>
    private static ImmutableArray<Mend> Mends(PlantSetting setting, Batch batch, Limit limit, MendSearch search) => limit.Name switch
    {
        LimitName.StrikeLiquorInTank or LimitName.MashInTun or LimitName.MashInLauterTun =>
            Some(search.ThickerMash(limit), search.SmallerBatch(limit, batch), search.Sparge(limit), new(MendCode.TwoMashes, 2, "")),
        LimitName.SpargeVolume => Some(search.ThickerMash(limit), search.LargerBatch(limit, batch), search.SmallerBatch(limit, batch), new(MendCode.NoSparge, 0, "")),
        LimitName.WortInKettle => Some(search.SmallerBatch(limit, batch), new(MendCode.KettleExtension, Math.Ceiling(limit.Value - limit.Bound), "L")),
        LimitName.WortInWhirlpool => Some(search.SmallerBatch(limit, batch), new(MendCode.StandInKettle, limit.Bound, "L")),
        LimitName.WortInFermenter => Some(search.SmallerBatch(limit, batch), new(MendCode.LargerFermenter, Math.Ceiling(limit.Value - limit.Bound), "L")),
        LimitName.SpargeLiquorInTank => Some(search.SmallerBatch(limit, batch), search.ThinnerMash(limit), new(MendCode.SpargeInTwoFills, 2, "")),
        LimitName.DecoctionCoversElements => Some(search.LargerBatch(limit, batch), new(MendCode.LowerElement, limit.Value, "L"), new(MendCode.OtherMashHeating, 0, "")),
        LimitName.DecoctionShare => [new(MendCode.SmallerRise, 0, ""), new(MendCode.OtherMashHeating, 0, "")],
        LimitName.StrikeTemperature => Some(search.ThinnerMash(limit), new(MendCode.WarmTheTunFirst, limit.Bound, "°C")),
        LimitName.MashCoversElements or LimitName.WortCoversElements => Some(search.LargerBatch(limit, batch), new(MendCode.LowerElement, limit.Value, "L")),
        LimitName.PitchTemperature => Some(search.ColderWater(limit, setting.SourceWaterC), CoolerFermenter(setting, batch)),
        LimitName.LiftOfPump => [new(MendCode.LowerInlet, limit.Bound, "m"), new(MendCode.StrongerPump, limit.Value, "m")],
        LimitName.FallByGravity => [new(MendCode.RaiseVessel, limit.Bound - limit.Value, "m"), new(MendCode.AddPump, 1, "")],
        LimitName.Evaporation => [new(MendCode.LowerEvaporation, Math.Floor(20 * limit.Bound) / 20, "kg/h"), new(MendCode.MoreHeat, limit.Value / limit.Bound, "times")],
        _ when LimitName.LoadOf(limit.Name) is not null => [new(MendCode.LargerCircuit, limit.Value, "kW"), new(MendCode.SmallerElement, limit.Bound, "kW")],
        _ when !limit.AtMost => [new(MendCode.MoreHeat, limit.Bound, limit.Unit)],
        _ => [new(MendCode.CoolInFermenter, limit.Bound, limit.Unit)],
    };

    /// <summary>One that has its own cooling cools on already.</summary>
    private static Mend? CoolerFermenter(PlantSetting setting, Batch batch) =>
        setting.Brewhouse.Fermenter.CoolingW > 0 ? null : new(MendCode.CoolInFermenter, batch.Recipe.Yeast.PitchC, "°C");

    private static ImmutableArray<Mend> Some(params ReadOnlySpan<Mend?> mends)
    {
        var found = ImmutableArray.CreateBuilder<Mend>();
        foreach (var mend in mends)
        {
            if (mend is not null)
                found.Add(mend);
        }
        return found.ToImmutable();
    }
}
