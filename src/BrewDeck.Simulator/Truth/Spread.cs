using System.Collections.Immutable;

namespace BrewDeck.Simulator.Truth;

/// <summary>How far a real brewhouse lies from its profile in one respect.</summary>
/// <param name="Name">Stable name, snake_case; also the name of its random stream.</param>
/// <param name="Unit">Unit of <paramref name="Sd"/>; <c>1</c> for a share of the profile's value.</param>
/// <param name="Sd">Standard deviation; draws are cut at three of them.</param>
/// <param name="DayShare">
/// Share of the variance that changes from day to day, 0..1; the rest belongs to the brewhouse and stays. Matters only where several
/// days are brewed on one brewhouse.
/// </param>
public sealed record Spread(string Name, string Unit, double Sd, double DayShare = 0);

/// <summary>
/// The one table of what differs between the profile and the plant, and from day to day. All common practice (what a careful home
/// brewer's repeated days show), no source.
/// </summary>
public static class Spreads
{
    /// <summary>Mains power against rated, voltage squared.</summary>
    public static readonly Spread MainsPower = new("mains_power", "1", 0.02, 0.5);

    /// <summary>Share of an element's power that reaches the liquid, drawn for each vessel.</summary>
    public static readonly Spread NetPower = new("net_power", "1", 0.02);

    public static readonly Spread WallLoss = new("wall_loss", "1", 0.15);

    public static readonly Spread WallHeatCapacity = new("wall_heat_capacity", "1", 0.08);

    /// <summary>Time constant between liquid and wall around 60 s.</summary>
    public static readonly Spread WallLag = new("wall_lag", "s", 15);

    /// <summary>Hoses while wort or mash is pumped round, around 1.2 W/K.</summary>
    public static readonly Spread HoseLoss = new("hose_loss", "W/K", 0.4);

    /// <summary>How strong a boil the brewer sets against the usual one.</summary>
    public static readonly Spread Evaporation = new("evaporation", "1", 0.05, 0.15);

    /// <summary>Share of the laboratory extract that dissolves in the end: houses differ far more than the days of one house (0.0043).</summary>
    public static readonly Spread ConversionYield = new("conversion_yield", "fraction", 0.025, 0.03);

    /// <summary>Speed of conversion: crush and enzymes.</summary>
    public static readonly Spread ConversionSpeed = new("conversion_speed", "1", 0.15, 0.3);

    public static readonly Spread Absorption = new("absorption", "1", 0.05, 0.15);

    /// <summary>Slaking heat of the grist.</summary>
    public static readonly Spread Slaking = new("slaking", "1", 0.2, 0.3);

    /// <summary>Back-mixing of the sparge in the bed.</summary>
    public static readonly Spread BedMixing = new("bed_mixing", "1", 0.2, 0.2);

    /// <summary>Exchange between the liquor that moves and the wort inside the grain.</summary>
    public static readonly Spread BedExchange = new("bed_exchange", "1", 0.25, 0.2);

    /// <summary>Dead space, drawn for each vessel.</summary>
    public static readonly Spread DeadSpace = new("dead_space", "1", 0.1);

    public static readonly Spread PumpFlow = new("pump_flow", "1", 0.08, 0.1);

    public static readonly Spread RunoffFlow = new("runoff_flow", "1", 0.1, 0.3);

    /// <summary>Alpha acid of a hop lot against its label, drawn for each name.</summary>
    public static readonly Spread AlphaAcid = new("alpha_acid", "1", 0.05);

    /// <summary>What of the isomerised alpha acid stays in the wort.</summary>
    public static readonly Spread Utilisation = new("utilisation", "1", 0.05, 0.2);

    public static readonly Spread ChillerTransfer = new("chiller_transfer", "1", 0.08, 0.1);

    public static readonly Spread ChillerWater = new("chiller_water", "1", 0.06, 0.3);

    /// <summary>Heat that a fermenter's own cooling takes from the wort.</summary>
    public static readonly Spread FermenterCooling = new("fermenter_cooling", "1", 0.15, 0.3);

    /// <summary>How long a brewer takes to look and to read, against others: mostly a habit.</summary>
    public static readonly Spread Pace = new("pace", "1", 0.2, 0.2);

    /// <summary>How far the kettle stands open after the boil: a brewer's habit, and how the lid happens to lie.</summary>
    public static readonly Spread OpenKettle = new("open_kettle", "1", 0.19, 0.5);

    public static readonly Spread Trub = new("trub", "1", 0.15, 0.3);

    public static readonly Spread HopAbsorption = new("hop_absorption", "1", 0.12, 0.2);

    public static readonly Spread LineLoss = new("line_loss", "1", 0.12, 0.2);

    public static readonly Spread SourceWater = new("source_water", "K", 0.5, 1);

    public static readonly Spread Ambient = new("ambient", "K", 1.0, 1);

    public static readonly Spread GrainTemperature = new("grain_temperature", "K", 0.7, 1);

    public static readonly Spread Weather = new("weather", "Pa", 700, 1);

    /// <summary>Acidity of mash (around 5.4) and wort.</summary>
    public static readonly Spread Acidity = new("acidity", "pH", 0.08, 0.5);

    /// <summary>Bias of a vessel's probe, which its thermostat also follows; drawn for each vessel.</summary>
    public static readonly Spread ThermometerBias = new("thermometer_bias", "K", 0.25);

    public static readonly Spread ThermometerNoise = new("thermometer_noise", "K", 0.1);

    /// <summary>Scale of a sight glass, drawn for each vessel.</summary>
    public static readonly Spread SightScale = new("sight_scale", "1", 0.006);

    public static readonly Spread SightOffset = new("sight_offset", "L", 0.12, 0.2);

    public static readonly Spread SightNoise = new("sight_noise", "L", 0.15);

    public static readonly Spread HydrometerBias = new("hydrometer_bias", "SG", 0.0004, 0.3);

    public static readonly Spread HydrometerNoise = new("hydrometer_noise", "SG", 0.0004);

    /// <summary>Offset of the refractometer after its wort correction.</summary>
    public static readonly Spread RefractometerBias = new("refractometer_bias", "%", 0.1, 0.5);

    public static readonly Spread RefractometerNoise = new("refractometer_noise", "%", 0.1);

    public static readonly Spread PhBias = new("ph_bias", "pH", 0.03, 1);

    public static readonly Spread PhNoise = new("ph_noise", "pH", 0.02);

    public static readonly Spread ScaleBias = new("scale_bias", "1", 0.003);

    public static readonly Spread ScaleNoise = new("scale_noise", "kg", 0.005);

    /// <summary>All of them, for a printed table.</summary>
    public static readonly ImmutableArray<Spread> All =
    [
        MainsPower, NetPower, WallLoss, WallHeatCapacity, WallLag, HoseLoss, Evaporation, ConversionYield, ConversionSpeed,
        Absorption, Slaking, BedMixing, BedExchange, DeadSpace, PumpFlow, RunoffFlow, AlphaAcid, Utilisation, ChillerTransfer,
        ChillerWater, FermenterCooling, OpenKettle, Pace, Trub, HopAbsorption, LineLoss, SourceWater, Ambient, GrainTemperature, Weather, Acidity,
        ThermometerBias, ThermometerNoise, SightScale, SightOffset, SightNoise, HydrometerBias, HydrometerNoise, RefractometerBias,
        RefractometerNoise, PhBias, PhNoise, ScaleBias, ScaleNoise,
    ];
}
