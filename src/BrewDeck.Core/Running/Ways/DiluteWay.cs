using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Ways;

/// <summary>Water into the kettle, or boiled and cooled into the fermenter once the wort is there.</summary>
internal sealed class DiluteWay : Way
{
    public override bool Helps(Off off) => off.Kind is OffKind.Wort;

    public override IEnumerable<Remedy> Offers(Weigh weigh, Off off)
    {
        var aims = Aims.Of(weigh, weigh.Forecast);
        if (weigh.Live.PreBoil is null && !weigh.HasRunOff)
            return [];
        var cold = weigh.Live.Plant.KnockedOutL > 0;
        var vessel = cold ? Places.Fermenter : weigh.Kettle.Id;
        var most = weigh.RoomL(vessel);
        if (!aims.Gravity.Near)
            return aims.Gravity.By > 0 ? OneOf(weigh.Meeting(a => a.Gravity, most, l => Of(weigh, vessel, l, cold))) : [];
        return aims.Volume is { Near: false, By: < 0 } && MayThin(weigh, aims.Gravity) ? OneOf(weigh.Meeting(a => a.Volume, most, l => Of(weigh, vessel, l, cold))) : [];
    }

    /// <summary>Nobody waters down a wort that is on the weak side already for the sake of its litres, unless these matter most.</summary>
    private static bool MayThin(Weigh weigh, Aim gravity) => weigh.Plan.Choices.MattersMost == MattersMost.Volume || gravity.By > -gravity.Noticed / 3;

    private static Remedy Of(Weigh weigh, string vessel, double litres, bool cold) => Now(weigh, RemedyKind.Dilute, litres, new StepSpec
    {
        Id = weigh.FreshId("water"),
        Kind = StepKind.AddWater,
        Unit = cold ? UnitProcedure.Cool : UnitProcedure.Boil,
        Vessel = vessel,
        VolumeL = litres,
        TargetC = weigh.Live.Setting.SourceWaterC,
        HandsS = 120,
        Cautions = cold ? Cautions.None : Cautions.Scald | Cautions.Steam,
    });
}
