using System.Collections.Immutable;

namespace BrewDeck.Core.Running.Ensemble;

/// <summary>How far a real brewhouse or an instrument usually lies from what is stated about it.</summary>
/// <param name="Name">Stable name, snake_case.</param>
/// <param name="Unit">Unit of <paramref name="Sd"/>; <c>1</c> for a share of the stated value.</param>
/// <param name="Sd">Standard deviation.</param>
public sealed record UsualSpread(string Name, string Unit, double Sd);

/// <summary>
/// What a brewer knows about how uncertain a day is, where the profile says nothing of its own. All common practice (what a careful
/// home brewer's repeated days show), no source.
/// </summary>
public static class UsualSpreads
{
    /// <summary>Nothing of a brewhouse lies farther off than so many standard deviations without being broken.</summary>
    public const double CutAt = 3;

    /// <summary>What is left of a standard deviation of a normal spread that is cut there: sqrt(1 - 6 φ(3) / (2 Φ(3) - 1)).</summary>
    public const double CutSd = 0.98658;

    public static readonly UsualSpread MainsPower = new("mains_power", "1", 0.02);

    /// <summary>Share of an element's power that reaches the liquid, for each vessel.</summary>
    public static readonly UsualSpread NetPower = new("net_power", "1", 0.02);

    public static readonly UsualSpread WallLoss = new("wall_loss", "1", 0.15);

    /// <summary>How strong a boil the brewer sets against the usual one.</summary>
    public static readonly UsualSpread Evaporation = new("evaporation", "1", 0.05);

    /// <summary>
    /// Of a brewhouse whose yield nobody has measured: crush, malt and mash give 0.92 to 0.99 of the laboratory's extract, and two such
    /// houses in three lie within this. What one house's days differ by is a fifth of it; lessons find the house's own.
    /// </summary>
    public static readonly UsualSpread ConversionYield = new("conversion_yield", "fraction", 0.025);

    public static readonly UsualSpread Absorption = new("absorption", "1", 0.05);

    /// <summary>Back-mixing of the sparge in the bed.</summary>
    public static readonly UsualSpread BedMixing = new("bed_mixing", "1", 0.2);

    /// <summary>Exchange between the liquor that moves and the wort inside the grain.</summary>
    public static readonly UsualSpread BedExchange = new("bed_exchange", "1", 0.25);

    /// <summary>The spread of residence time is the reciprocal of the stages; the grain's exchange makes about three tenths of it.</summary>
    public const double MixingShare = 0.7, ExchangeShare = 0.3;

    /// <summary>Both together, as a share of the washing stages.</summary>
    public static double StagesSd { get; } = Math.Sqrt(Math.Pow(MixingShare * BedMixing.Sd, 2) + Math.Pow(ExchangeShare * BedExchange.Sd, 2));

    /// <summary>Dead space, for each vessel.</summary>
    public static readonly UsualSpread DeadSpace = new("dead_space", "1", 0.1);

    public static readonly UsualSpread RunoffFlow = new("runoff_flow", "1", 0.1);

    /// <summary>Alpha acid of a hop lot against its label, for each name.</summary>
    public static readonly UsualSpread AlphaAcid = new("alpha_acid", "1", 0.05);

    public static readonly UsualSpread Utilisation = new("utilisation", "1", 0.05);

    public static readonly UsualSpread ChillerTransfer = new("chiller_transfer", "1", 0.08);

    public static readonly UsualSpread ChillerWater = new("chiller_water", "1", 0.06);

    /// <summary>Heat that a fermenter's own cooling takes from the wort: a cabinet's depends on the room, on frost and on what else is in it.</summary>
    public static readonly UsualSpread FermenterCooling = new("fermenter_cooling", "1", 0.15);

    public static readonly UsualSpread Trub = new("trub", "1", 0.15);

    public static readonly UsualSpread HopAbsorption = new("hop_absorption", "1", 0.12);

    public static readonly UsualSpread LineLoss = new("line_loss", "1", 0.12);

    public static readonly UsualSpread SourceWater = new("source_water", "K", 0.5);

    public static readonly UsualSpread Ambient = new("ambient", "K", 1.0);

    /// <summary>Air pressure, by which the boil is hotter or colder.</summary>
    public static readonly UsualSpread Weather = new("weather", "Pa", 700);

    public static readonly UsualSpread ThermometerBias = new("thermometer_bias", "K", 0.25);

    public static readonly UsualSpread ThermometerNoise = new("thermometer_noise", "K", 0.1);

    /// <summary>Scale of a sight glass, for each vessel.</summary>
    public static readonly UsualSpread SightScale = new("sight_scale", "1", 0.006);

    public static readonly UsualSpread SightOffset = new("sight_offset", "L", 0.12);

    public static readonly UsualSpread SightNoise = new("sight_noise", "L", 0.15);

    public static readonly UsualSpread HydrometerBias = new("hydrometer_bias", "SG", 0.0004);

    public static readonly UsualSpread HydrometerNoise = new("hydrometer_noise", "SG", 0.0004);

    public static readonly UsualSpread RefractometerBias = new("refractometer_bias", "%", 0.1);

    public static readonly UsualSpread RefractometerNoise = new("refractometer_noise", "%", 0.1);

    /// <summary>
    /// How strong the wort is that drains after the sparge: the washing model keeps the ratio of outlet to bed as it was, a real bed does not.
    /// Not a thing of the plant but of what the model leaves open; counts where little is sparged. Common practice, no source.
    /// </summary>
    public static readonly UsualSpread DrainStrength = new("drain_strength", "1", 0.1);

    /// <summary>
    /// How far the kettle stands open after the boil: anything from half to fully is as likely (see <see cref="Planning.PlantSetting.OpenShare"/>).
    /// </summary>
    public static readonly UsualSpread OpenKettle = new("open_kettle", "1", 0.19);

    /// <summary>How long a brewer takes to look and to read, against the usual (<see cref="UsualPace"/>): people differ by a fifth, common practice, no source.</summary>
    public static readonly UsualSpread Pace = new("pace", "1", 0.2);

    /// <summary>All that a simulated plant must share, for a printed table and for the check that both state the same.</summary>
    public static readonly ImmutableArray<UsualSpread> All =
    [
        MainsPower, NetPower, WallLoss, Evaporation, ConversionYield, Absorption, BedMixing, BedExchange, DeadSpace, RunoffFlow,
        AlphaAcid, Utilisation, ChillerTransfer, ChillerWater, FermenterCooling, OpenKettle, Pace, Trub, HopAbsorption, LineLoss, SourceWater, Ambient, Weather,
        ThermometerBias, ThermometerNoise, SightScale, SightOffset, SightNoise, HydrometerBias, HydrometerNoise, RefractometerBias, RefractometerNoise,
    ];
}
