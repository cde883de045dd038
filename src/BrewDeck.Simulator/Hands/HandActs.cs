using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Simulator.Nature;
using BrewDeck.Simulator.Plant;

namespace BrewDeck.Simulator.Hands;

/// <summary>What each kind of step is on the plant: how it begins, what the hands watch, how it ends.</summary>
internal sealed class HandActs(VirtualPlant plant, Instruments instruments, HumanPace pace)
{
    /// <summary>The hose runs somewhat faster than its owner says.</summary>
    private const double TapFactor = 1.1;

    /// <summary>Beyond any boiling point: full on.</summary>
    private const double FullOnC = 150;

    /// <summary>Below the boil while the kettle fills, so that nothing boils over unwatched; K.</summary>
    private const double BelowBoilK = 2;

    /// <summary>Liquor round a coil over the mash that is wanted: as much as it bears, but what will be sparged with is kept from the husks' limit; K, K and °C.</summary>
    private const double LiquorAboveK = 8, LiquorLeastAboveK = 2, HuskLimitC = 78;

    /// <summary>A thick mash spits: so much of the power of a rolling boil.</summary>
    private const double Gentle = 0.5;

    private Brewhouse Profile => plant.Truth.Profile;

    public void Begin(Job job, bool again)
    {
        var spec = job.Order.Spec;
        if (again)
            GoOnPouring(spec);
        else
            Bring(job);
        switch (spec.Kind)
        {
            case StepKind.Ramp or StepKind.HeatMash when plant.Truth.MashHeating == MashHeating.Coil:
                PumpThroughCoil(spec.Vessel, job.Order.TargetC ?? 0);
                break;
            case StepKind.HeatStrike or StepKind.HeatSparge or StepKind.Ramp or StepKind.HeatMash:
                HeatTo(spec.Vessel, job.Order.TargetC);
                break;
            case StepKind.TransferStrike or StepKind.DoughIn or StepKind.TransferMash or StepKind.TransferWort or StepKind.ReturnDecoction:
                plant.PumpRound(null);
                plant.HeatOff(spec.Vessel);
                break;
            case StepKind.LiftBasket:
                plant.PumpRound(null);
                plant.HeatOff(spec.Vessel);
                plant.SettleMash();
                break;
            case StepKind.Rest:
                Keep(spec, job.Order.TargetC);
                break;
            case StepKind.Vorlauf:
                plant.HeatOff(spec.Vessel);
                plant.PumpThroughCoil(null, 0);
                plant.SettleMash();
                break;
            case StepKind.Lauter or StepKind.RunOff:
                OpenTun(job);
                break;
            case StepKind.PullDecoction:
                plant.PumpRound(null);
                break;
            case StepKind.BoilDecoction:
                plant.Heat(spec.Vessel, FullOnC, Gentle * Math.Min(BoilW(Profile[spec.Vessel]), Profile[spec.Vessel].RatedW));
                break;
            case StepKind.HeatToBoil or StepKind.HeatDecoction:
                HeatTo(spec.Vessel, FullOnC);
                break;
            case StepKind.HotBreak or StepKind.Boil:
                Roll(spec.Vessel);
                break;
            default:
                BeginCooling(job);
                break;
        }
    }

    /// <summary>Closes valves at the mark; sets the drained basket aside.</summary>
    public void Watch(Job job)
    {
        if (job.Order.Kind == StepKind.LiftBasket && job.WorkDone(plant.NowS))
            plant.LiftBasket();
        if (job.Order.Kind is not (StepKind.Lauter or StepKind.RunOff) || !plant.RunsOff)
            return;
        if (plant.RunDry || instruments.ShownColdL(job.Order.Spec.To) >= job.Order.Spec.VolumeL)
            CloseTun(job);
    }

    public void Pause(Job job)
    {
        plant.StopPours();
        Leave(job);
    }

    /// <summary>Valves shut and heat off; what has been poured is on its way.</summary>
    public void Leave(Job job)
    {
        if (job.Order.Kind is StepKind.Lauter or StepKind.RunOff)
            CloseTun(job);
        else if (job.Order.Kind is StepKind.CastOut)
            plant.CloseCastOut();
        else if (job.Order.Kind is StepKind.CoolInFermenter)
            plant.ChillFermenter(false);
        else if (plant.Has(job.Order.Spec.Vessel))
            plant.HeatOff(job.Order.Spec.Vessel);
    }

    public void End(Job job)
    {
        var spec = job.Order.Spec;
        switch (spec.Kind)
        {
            case StepKind.Fill or StepKind.TransferStrike or StepKind.BatchSparge or StepKind.AddWater or StepKind.Infuse or StepKind.FreeBed
                or StepKind.TransferMash or StepKind.TransferWort or StepKind.PullDecoction or StepKind.ReturnDecoction:
                plant.FinishPours();
                if (spec.Label == StepLabels.ToBoil)
                    plant.BoilIn(spec.To);
                break;
            case StepKind.Drain:
                plant.Drain(spec.Vessel);
                break;
            case StepKind.DoughIn:
                plant.FinishDoughIn();
                break;
            case StepKind.LiftBasket:
                plant.LiftBasket();
                break;
            case StepKind.Ramp or StepKind.HeatMash when plant.Truth.MashHeating == MashHeating.Coil:
                plant.Heat(Profile.HotLiquorTank.Id, Math.Max(Profile.Habits.SpargeC, job.Order.TargetC + 1 ?? 0), Profile.HotLiquorTank.RatedW);
                break;
            case StepKind.MovePlug:
                plant.MovePlug(spec.Label, spec.To);
                break;
            case StepKind.Lauter or StepKind.RunOff:
                CloseTun(job);
                break;
            case StepKind.ChillInKettle:
                plant.Coil(false);
                break;
            case StepKind.CoolInFermenter:
                plant.ChillFermenter(false);
                break;
            case StepKind.CastOut:
                plant.CloseCastOut();
                break;
        }
    }

    /// <summary>Water and goods: once only.</summary>
    private void Bring(Job job)
    {
        var spec = job.Order.Spec;
        switch (spec.Kind)
        {
            case StepKind.Fill:
                plant.FillFromTap(spec.Vessel, spec.VolumeL ?? 0, TapFactor * Profile.Habits.FillLPerMin);
                break;
            case StepKind.AddWater:
                plant.AddWater(spec.Vessel, spec.VolumeL ?? 0, spec.TargetC ?? plant.Truth.SourceWaterC);
                break;
            case StepKind.BatchSparge:
                plant.StirMash();
                plant.Transfer(Profile.HotLiquorTank.Id, spec.Vessel, spec.SpargeL ?? 0, FlowLPerMin(Profile.HotLiquorTank.Id, spec.Vessel));
                break;
            case StepKind.DoughIn:
                BringGrist(job);
                break;
            case StepKind.AddFirstWortHops or StepKind.AddToBoil or StepKind.AddToWhirlpool or StepKind.AddExtract:
                BringCharges(spec);
                break;
            case StepKind.Infuse:
                plant.StirMash();
                plant.Transfer(spec.Vessel, spec.To, job.Order.VolumeL ?? 0, FlowLPerMin(spec.Vessel, spec.To));
                break;
            case StepKind.PullDecoction:
                plant.PullMash(spec.Vessel, spec.To, job.Order.VolumeL ?? 0, FlowLPerMin(spec.Vessel, spec.To));
                break;
            case StepKind.ReturnDecoction:
                plant.ReturnMash(spec.Vessel, spec.To, FlowLPerMin(spec.Vessel, spec.To));
                break;
            case StepKind.TransferMash:
                plant.TransferMash(spec.Vessel, spec.To, FlowLPerMin(spec.Vessel, spec.To));
                break;
            case StepKind.TransferWort:
                plant.TransferWort(spec.Vessel, spec.To, FlowLPerMin(spec.Vessel, spec.To));
                break;
            case StepKind.FreeBed when spec.VolumeL > 0:
                plant.Transfer(Profile.HotLiquorTank.Id, spec.Vessel, spec.VolumeL.Value, plant.Truth.PumpLPerMin);
                break;
            case StepKind.TransferStrike:
                plant.Transfer(spec.Vessel, spec.To, plant.Faults.StrikeShare * (spec.VolumeL ?? 0), FlowLPerMin(spec.Vessel, spec.To));
                break;
        }
    }

    /// <summary>
    /// Where heights and a free flow are told, the way up takes from the pump what it leaves of its shut-off head: curve and friction both
    /// go with the square of the flow.
    /// </summary>
    private double FlowLPerMin(string fromId, string toId)
    {
        var usual = plant.Truth.PumpLPerMin;
        if (Profile.Pumps.IsEmpty || Profile.Pumps[0] is not { FreeFlowLPerMin: not null } pump
            || Profile[fromId].OutletM is not { } outlet || Profile[toId].InletM is not { } inlet)
            return usual;
        return usual * Math.Sqrt(Math.Max(0.01, 1 - (inlet - outlet) / pump.ShutOffHeadM));
    }

    private void GoOnPouring(StepSpec spec)
    {
        switch (spec.Kind)
        {
            case StepKind.Fill or StepKind.AddWater:
                plant.GoOnPouring(null, spec.Vessel);
                break;
            case StepKind.BatchSparge or StepKind.FreeBed:
                plant.GoOnPouring(Profile.HotLiquorTank.Id, spec.Vessel);
                break;
            case StepKind.TransferStrike or StepKind.Infuse or StepKind.TransferMash or StepKind.TransferWort or StepKind.PullDecoction or StepKind.ReturnDecoction:
                plant.GoOnPouring(spec.Vessel, spec.To);
                break;
        }
    }

    private void BringGrist(Job job)
    {
        double weighed = 0, water = 0, extract = 0;
        foreach (var charge in job.Order.Spec.Charges)
        {
            if (charge.Kind != ChargeKind.Grist)
                continue;
            weighed += charge.Amount;
            water += charge.WaterKg;
            extract += charge.ExtractKg;
        }
        var share = plant.Faults.GristShare;
        plant.DoughIn(share * weighed, share * water, share * extract, job.WorkS);
    }

    private void BringCharges(StepSpec spec)
    {
        foreach (var charge in spec.Charges)
        {
            if (charge.Kind == ChargeKind.Hop)
                plant.AddHops(charge.Name, charge.Amount / 1000, charge.AlphaG);
            else if (charge.ExtractKg > 0)
                plant.AddExtract(spec.Vessel, charge.ExtractKg, charge.WaterKg);
        }
    }

    private void HeatTo(string vesselId, double? setC)
    {
        plant.Heat(vesselId, setC ?? double.NaN, Profile[vesselId].RatedW);
        plant.PumpRound(plant[vesselId].GrainKg > 0 ? vesselId : null);
    }

    private void Keep(StepSpec spec, double? setC)
    {
        if (plant.Truth.MashHeating == MashHeating.Coil)
            LetThroughCoil(spec.Vessel, setC ?? 0);
        else if (plant.Truth.MashHeating is MashHeating.Direct or MashHeating.Decoction && plant.Powers(spec.Vessel))
            HeatTo(spec.Vessel, setC);
        else
            plant.HeatOff(spec.Vessel);
    }

    /// <summary>The liquor is kept somewhat hotter than the mash to come, its own heat on.</summary>
    private void PumpThroughCoil(string tunId, double setC)
    {
        var tank = Profile.HotLiquorTank;
        plant.Heat(tank.Id, Math.Min(setC + LiquorAboveK, Math.Max(setC + LiquorLeastAboveK, HuskLimitC)), tank.RatedW);
        LetThroughCoil(tunId, setC);
    }

    /// <summary>The tank stays at what it was set to last: in a rest nobody touches it.</summary>
    private void LetThroughCoil(string tunId, double setC)
    {
        plant.PumpRound(tunId);
        plant.PumpThroughCoil(tunId, setC);
    }

    private void OpenTun(Job job)
    {
        var spec = job.Order.Spec;
        plant.PumpRound(null);
        plant.HeatOff(spec.Vessel);
        plant.PumpThroughCoil(null, 0);
        plant.SettleMash();
        var sparge = double.IsNaN(job.SpargeLeftL) ? spec.SpargeL ?? 0 : job.SpargeLeftL;
        plant.OpenRunOff(spec.To, Profile.HotLiquorTank.Id, sparge);
        plant.Heat(spec.To, Vapours.BoilingC(plant.Truth.AirPa) - BelowBoilK, Profile[spec.To].RatedW);
    }

    private void CloseTun(Job job)
    {
        if (plant.RunsOff)
            job.SpargeLeftL = plant.SpargeLeftL;
        plant.CloseRunOff();
        if (Profile.CanSparge)
            plant.HeatOff(Profile.HotLiquorTank.Id);
    }

    private void Roll(string kettleId)
    {
        plant.Lid(kettleId, plant.Faults.BoilOpenShare);
        plant.Heat(kettleId, FullOnC, Math.Min(BoilW(Profile[kettleId]), Profile[kettleId].RatedW));
    }

    /// <summary>The power that gives the wanted boil if the profile were right: the knob stands where it always stands.</summary>
    private double BoilW(Vessel kettle)
    {
        var raisesW = plant.Truth.EvaporationKgPerH / 3600 * Vapours.LatentJPerKg(100);
        var losesW = kettle.LossWPerK * (100 - plant.Truth.AmbientC);
        var net = (kettle.Elements.Sum(e => e.PowerW * e.NetFraction) + (kettle.Burner?.NetW ?? 0)) / Math.Max(1, kettle.RatedW);
        return (raisesW + losesW) / Math.Max(0.05, net);
    }

    private void BeginCooling(Job job)
    {
        var vessel = job.Order.Spec.Vessel;
        switch (job.Order.Kind)
        {
            case StepKind.KnockOut:
                plant.HeatOff(vessel);
                plant.Lid(vessel, plant.Truth.LidAjar);
                break;
            case StepKind.Whirlpool:
                StopBoil(vessel);
                plant.PumpRound(vessel);
                break;
            case StepKind.Stand:
                StopBoil(vessel);
                plant.PumpRound(null);
                break;
            case StepKind.ChillInKettle:
                plant.HeatOff(vessel);
                plant.Coil(true);
                break;
            case StepKind.CoolInFermenter:
                CoolInFermenter(job.Order.Spec);
                break;
            case StepKind.CastOut:
                CastOut(job);
                break;
            case StepKind.Clean or StepKind.Drain when plant.Has(vessel):
                plant.HeatOff(vessel);
                break;
        }
    }

    /// <summary>A remedy may have had the wort boiled once more after the knock-out: nobody stirs it or lets it stand with the heat on.</summary>
    private void StopBoil(string vesselId)
    {
        plant.HeatOff(vesselId);
        plant.Lid(vesselId, Math.Min(plant[vesselId].OpenShare, plant.Truth.LidAjar));
    }

    private void CoolInFermenter(StepSpec spec)
    {
        if (spec.Label == StepLabels.OwnCooling)
            plant.CoolFermenter(spec.TargetC!.Value);
        else
            plant.ChillFermenter(spec.Label != StepLabels.Room);
    }

    /// <summary>The valve is set by the thermometer behind the chiller, here the fermenter's.</summary>
    private void CastOut(Job job)
    {
        plant.PumpRound(null);
        plant.HeatOff(job.Order.Spec.Vessel);
        plant.Lid(job.Order.Spec.Vessel, 0);
        var probeBiasK = plant.Fermenter.Truth.ThermometerBiasK;
        plant.OpenCastOut((job.Order.TargetC ?? plant.Truth.SourceWaterC + 5) - probeBiasK + pace.ValveErrorK());
    }
}
