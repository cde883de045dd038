using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;

namespace BrewDeck.Simulator.Truth;

/// <summary>
/// What the brewhouse really is on the rehearsed day: around its profile by the spreads of <see cref="Spreads"/>, drawn from a seed.
/// The deck never sees it; only instruments look at the plant.
/// </summary>
public sealed record HiddenTruth
{
    public required int Seed { get; init; }

    public required Brewhouse Profile { get; init; }

    /// <summary>In the order of the profile's vessels; the fermenter is last.</summary>
    public required ImmutableArray<TankTruth> Tanks { get; init; }

    public required double AmbientC { get; init; }

    public required double SourceWaterC { get; init; }

    public required double GrainC { get; init; }

    public required double AirPa { get; init; }

    /// <summary>Number of sockets in use.</summary>
    public required int Circuits { get; init; }

    /// <summary>From rest to rest, as chosen for the day.</summary>
    public required MashHeating MashHeating { get; init; }

    /// <summary>The boil that the brewer sets, kg/h under the profile's heat and losses.</summary>
    public required double EvaporationKgPerH { get; init; }

    public required double ConversionYield { get; init; }

    public required double ConversionSpeed { get; init; }

    public required double SlakingFactor { get; init; }

    public required BedTruth Bed { get; init; }

    public required double PumpLPerMin { get; init; }

    /// <summary>Flow of the pumps against the profile's.</summary>
    public required double PumpFactor { get; init; }

    public required double RunoffLPerMin { get; init; }

    public required double HoseLossWPerK { get; init; }

    public required double UtilisationFactor { get; init; }

    public required ChillerTruth Chiller { get; init; }

    /// <summary>Heat that the fermenter's own cooling takes from the wort while it runs.</summary>
    public required double FermenterCoolingW { get; init; }

    /// <summary>How long the brewer takes to look and to read, against others.</summary>
    public required double Pace { get; init; }

    /// <summary>How far the kettle stands open while the wort is stirred and stands, 0..1.</summary>
    public required double LidAjar { get; init; }

    public required double TrubL { get; init; }

    public required double HopAbsorptionLPerKg { get; init; }

    public required double LineLossL { get; init; }

    public required double MashPh { get; init; }

    public required InstrumentTruth Instruments { get; init; }

    /// <summary>Of a hop lot's alpha acid against its label.</summary>
    public required double AlphaSd { get; init; }

    /// <summary>Alpha acid of a hop lot against its label; the same for every addition of that name.</summary>
    public double AlphaFactor(string hop) => 1 + AlphaSd * new Chance(Seed, "alpha_acid/" + hop).Normal();

    public int IndexOf(string vesselId)
    {
        for (var i = 0; i < Tanks.Length; i++)
        {
            if (Tanks[i].Id == vesselId)
                return i;
        }
        return -1;
    }

    /// <summary>A day of its own on a brewhouse of its own.</summary>
    public static HiddenTruth Draw(Brewhouse profile, DayChoices choices, int seed) =>
        new TruthDraw(profile, choices, seed).Draw();

    /// <summary>A day on a brewhouse that stays the same from day to day, while malt, weather, valves and noise change.</summary>
    /// <param name="house">Seed of the brewhouse.</param>
    /// <param name="day">Seed of the day.</param>
    public static HiddenTruth Draw(Brewhouse profile, DayChoices choices, int house, int day) =>
        new TruthDraw(profile, choices, day, house: house).Draw();

    /// <summary>What stays of a brewhouse from day to day: the truth that lessons look for.</summary>
    public static HiddenTruth OfHouse(Brewhouse profile, DayChoices choices, int house) =>
        new TruthDraw(profile, choices, 0, house: house, days: false).Draw();

    /// <summary>The brewhouse exactly as its profile says, instruments without error: what a rehearsal without surprises would be.</summary>
    public static HiddenTruth AsProfile(Brewhouse profile, DayChoices choices) =>
        new TruthDraw(profile, choices, 0, spreadFactor: 0).Draw();
}

/// <summary>A vessel as it really is.</summary>
/// <param name="WallJPerK">Heat capacity of the wall with fittings.</param>
/// <param name="WallWPerK">Between liquid and wall.</param>
/// <param name="LossWPerK">From the wall to the room.</param>
/// <param name="PowerFactor">Heat into the liquid against rated power times the profile's net share.</param>
/// <param name="SurfaceM2">Free surface.</param>
/// <param name="ThermometerBiasK">Of its probe.</param>
/// <param name="SightScale">What its sight glass shows of the true litres.</param>
public sealed record TankTruth(
    string Id,
    double WallJPerK,
    double WallWPerK,
    double LossWPerK,
    double PowerFactor,
    double SurfaceM2,
    double DeadSpaceL,
    double ThermometerBiasK,
    double SightScale,
    double SightOffsetL);

/// <summary>The grain bed: what it holds and how liquor moves through it. See <see cref="Plant.GrainBed"/>.</summary>
/// <param name="MixingFactor">On the back-mixing that belongs to the profile's stages.</param>
/// <param name="ExchangeFactor">On the exchange with the wort inside the grain.</param>
public sealed record BedTruth(double Stages, double AbsorptionLPerKg, double MixingFactor, double ExchangeFactor);

public sealed record ChillerTruth(bool IsCoil, double UaWPerK, double WaterLPerMin, double WortLPerMin);

/// <summary>Biases of the instruments that go from vessel to vessel.</summary>
public sealed record InstrumentTruth(
    double HydrometerBiasSg, double RefractometerBiasPercent, double PhBias, double ScaleFactor, double NoiseFactor);
