using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Simulator.Nature;

namespace BrewDeck.Simulator.Truth;

/// <summary>Draws a <see cref="HiddenTruth"/>; every parameter from the stream of its own name.</summary>
/// <param name="house">Seed of what stays from day to day; null: every day is drawn with a brewhouse of its own.</param>
/// <param name="days">False: the brewhouse on a day without anything of its own.</param>
internal sealed class TruthDraw(Brewhouse profile, DayChoices choices, int seed, double spreadFactor = 1, int? house = null, bool days = true)
{
    /// <summary>Mean of the wall's time constant, s.</summary>
    private const double WallLagS = 60;

    private const double HoseLossWPerK = 1.2;

    private const double MashPh = 5.4;

    /// <summary>Steam is let go while the wort is stirred and stands: the lid half over the kettle.</summary>
    private const double LidAjar = 0.5;

    public HiddenTruth Draw() => new()
    {
        Seed = seed,
        Profile = profile,
        Tanks = [.. profile.Vessels.Select(Tank), Fermenter()],
        AmbientC = choices.AmbientC + Off(Spreads.Ambient),
        SourceWaterC = Math.Max(1, choices.SourceWaterC + Off(Spreads.SourceWater)),
        GrainC = choices.GrainC + Off(Spreads.GrainTemperature),
        AirPa = Vapours.AirPa(choices.AltitudeM, Off(Spreads.Weather)),
        Circuits = Math.Min(choices.Circuits ?? profile.Circuits.Length, profile.Circuits.Length),
        EvaporationKgPerH = profile.Habits.EvaporationKgPerH * Factor(Spreads.Evaporation),
        MashHeating = choices.MashHeating ?? profile.Habits.MashHeating,
        ConversionYield = Math.Clamp(profile.Habits.ConversionYield + Off(Spreads.ConversionYield), 0, 1),
        ConversionSpeed = Factor(Spreads.ConversionSpeed),
        SlakingFactor = Factor(Spreads.Slaking),
        Bed = Bed(),
        PumpLPerMin = (profile.Pumps.IsEmpty ? 8 : profile.Pumps[0].FlowLPerMin) * Factor(Spreads.PumpFlow),
        PumpFactor = Factor(Spreads.PumpFlow),
        RunoffLPerMin = profile.Habits.RunoffLPerMin * Factor(Spreads.RunoffFlow),
        HoseLossWPerK = Math.Max(0, HoseLossWPerK + Off(Spreads.HoseLoss)),
        UtilisationFactor = Factor(Spreads.Utilisation),
        AlphaSd = spreadFactor * Spreads.AlphaAcid.Sd,
        Chiller = Chiller(),
        FermenterCoolingW = profile.Fermenter.CoolingW * Factor(Spreads.FermenterCooling),
        Pace = Factor(Spreads.Pace),
        LidAjar = LidAjar * Factor(Spreads.OpenKettle),
        TrubL = profile.Habits.TrubL * Factor(Spreads.Trub),
        HopAbsorptionLPerKg = profile.Habits.HopAbsorptionLPerKg * Factor(Spreads.HopAbsorption),
        LineLossL = profile.Habits.LineLossL * Factor(Spreads.LineLoss),
        MashPh = MashPh + Off(Spreads.Acidity),
        Instruments = Instruments(),
    };

    private TankTruth Tank(Vessel vessel)
    {
        var wallJPerK = vessel.HeatCapacityJPerK * Factor(Spreads.WallHeatCapacity, vessel.Id);
        var wallWPerK = wallJPerK / Math.Max(10, WallLagS + Off(Spreads.WallLag, vessel.Id));
        return new TankTruth(
            vessel.Id,
            wallJPerK,
            wallWPerK,
            BehindWall(vessel.LossWPerK * Factor(Spreads.WallLoss, vessel.Id), wallWPerK),
            Factor(Spreads.MainsPower) * Factor(Spreads.NetPower, vessel.Id),
            SurfaceM2(vessel),
            vessel.DeadSpaceL * Factor(Spreads.DeadSpace, vessel.Id),
            Off(Spreads.ThermometerBias, vessel.Id),
            Factor(Spreads.SightScale, vessel.Id),
            Off(Spreads.SightOffset, vessel.Id));
    }

    /// <summary>A covered tank of plastic or thin steel: common practice, no source.</summary>
    private TankTruth Fermenter() => new(
        Places.Fermenter,
        3_000,
        50,
        2 * Factor(Spreads.WallLoss, Places.Fermenter),
        1,
        0,
        0,
        Off(Spreads.ThermometerBias, Places.Fermenter),
        Factor(Spreads.SightScale, Places.Fermenter),
        Off(Spreads.SightOffset, Places.Fermenter));

    private BedTruth Bed() => new(
        profile.Habits.SpargeStages,
        profile.Habits.AbsorptionLPerKg * Factor(Spreads.Absorption),
        Math.Exp(Off(Spreads.BedMixing)),
        Math.Exp(Off(Spreads.BedExchange)));

    private ChillerTruth Chiller() => new(
        profile.Chiller.IsCoil,
        profile.Chiller.UaWPerK * Factor(Spreads.ChillerTransfer),
        profile.Chiller.WaterLPerMin * Factor(Spreads.ChillerWater),
        profile.Chiller.WortLPerMin);

    private InstrumentTruth Instruments() => new(
        Off(Spreads.HydrometerBias),
        Off(Spreads.RefractometerBias),
        Off(Spreads.PhBias),
        Factor(Spreads.ScaleBias),
        spreadFactor);

    /// <summary>The profile counts its loss from the liquid; the wall is a resistance on the way.</summary>
    private static double BehindWall(double lossWPerK, double wallWPerK) =>
        lossWPerK < 0.5 * wallWPerK ? lossWPerK * wallWPerK / (wallWPerK - lossWPerK) : lossWPerK;

    /// <summary>As wide as high where the profile gives no diameter.</summary>
    private static double SurfaceM2(Vessel vessel)
    {
        var diameterM = vessel.DiameterM ?? Math.Cbrt(4 * vessel.CapacityL / 1000 / Math.PI);
        return Math.PI / 4 * diameterM * diameterM;
    }

    /// <summary>As the profile states it of its own brewhouse, else as of any.</summary>
    private double Sd(Spread spread)
    {
        if (profile.Spreads is not { } own)
            return spread.Sd;
        // mixing and exchange in the bed are seven and three tenths of what makes the washing stages uncertain
        var usualStages = Math.Sqrt(Math.Pow(0.7 * Spreads.BedMixing.Sd, 2) + Math.Pow(0.3 * Spreads.BedExchange.Sd, 2));
        return spread == Spreads.ConversionYield ? own.ConversionYield ?? spread.Sd
            : spread == Spreads.Absorption ? own.Absorption ?? spread.Sd
            : spread == Spreads.BedMixing || spread == Spreads.BedExchange ? spread.Sd * (own.SpargeStages / usualStages ?? 1)
            : spread == Spreads.RunoffFlow ? own.Runoff ?? spread.Sd
            : spread == Spreads.Evaporation ? own.Evaporation ?? spread.Sd
            : spread == Spreads.ChillerTransfer ? own.ChillerTransfer ?? spread.Sd
            : spread.Sd;
    }

    private double Off(Spread spread, string of = "") =>
        spreadFactor * Sd(spread) * (house is { } own ? OfHouse(own, spread, of) : OfDay(spread, of));

    private double OfHouse(int own, Spread spread, string of)
    {
        var stays = Math.Sqrt(1 - spread.DayShare) * new Chance(own, $"house/{spread.Name}/{of}").Normal();
        return days ? stays + Math.Sqrt(spread.DayShare) * OfDay(spread, of) : stays;
    }

    private double OfDay(Spread spread, string of) => new Chance(seed, spread.Name + "/" + of).Normal();

    private double Factor(Spread spread, string of = "") => 1 + Off(spread, of);
}
