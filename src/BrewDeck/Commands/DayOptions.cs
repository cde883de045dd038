using System.Globalization;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Deck;
using BrewDeck.Deck.Wording;
using BrewDeck.Profiles;

namespace BrewDeck.Commands;

/// <summary>Brewhouse, recipe and the day's choices as given on the command line.</summary>
internal sealed record DayOptions
{
    /// <summary>What a number without a unit means, and what is shown.</summary>
    public UnitSystem Units { get; init; }

    public Notation Notation => Workplace.NotationOf(Units);

    public string Brewhouse { get; init; } = ProfileFolder.EverydayBrewhouse;

    public string Recipe { get; init; } = ProfileFolder.EverydayRecipe;

    public string? Batch { get; init; }

    public int? Circuits { get; init; }

    public string? Sparge { get; init; }

    public string? Mash { get; init; }

    public string? Start { get; init; }

    public string? Finish { get; init; }

    public string? SourceWater { get; init; }

    public string? Ambient { get; init; }

    public string? Grain { get; init; }

    public string? Altitude { get; init; }

    public string? Bitterness { get; init; }

    public string? Matters { get; init; }

    /// <summary>Each <c>HOP=PERCENT</c>.</summary>
    public string[] Alpha { get; init; } = [];

    /// <summary>Each <c>NAME=OTHER</c>, a malt or hop of the recipe and what is on hand.</summary>
    public string[] Instead { get; init; } = [];

    public string? Water { get; init; }

    public string? WaterTarget { get; init; }

    /// <exception cref="ProfileException">A file cannot be used.</exception>
    /// <exception cref="UsageException">A choice cannot be read.</exception>
    public PlanResult Draw(ProfileFolder profiles)
    {
        var (house, recipe) = Files(profiles);
        var choices = Choices() with
        {
            Water = Water is null ? null : profiles.Water(profiles.FindWater(Water)),
            WaterTarget = WaterTarget is null ? null : profiles.WaterTarget(profiles.FindWaterTarget(WaterTarget)),
        };
        return Planner.Draw(house, recipe, OnHand.Apply(choices, recipe, profiles, Alpha, Instead));
    }

    private (Brewhouse House, Recipe Recipe) Files(ProfileFolder profiles) =>
        (profiles.Brewhouse(profiles.FindBrewhouse(Brewhouse)), profiles.Recipe(profiles.FindRecipe(Recipe)));

    public DayChoices Choices()
    {
        var usual = new DayChoices();
        return usual with
        {
            BatchL = Within("--batch", Batch, DayBounds.BatchL, Dimension.Volume),
            Circuits = Circuits,
            Bitterness = Formula(usual.Bitterness),
            MattersMost = Aim(usual.MattersMost),
            Sparge = SpargeMethod(usual.Sparge),
            MashHeating = MashWay(),
            Start = Moment("--start", Start),
            Finish = Moment("--finish", Finish),
            SourceWaterC = Within("--source-water", SourceWater, DayBounds.SourceWaterC) ?? usual.SourceWaterC,
            AmbientC = Within("--ambient", Ambient, DayBounds.AmbientC) ?? usual.AmbientC,
            GrainC = Within("--grain", Grain, DayBounds.GrainC) ?? usual.GrainC,
            AltitudeM = Within("--altitude", Altitude, DayBounds.AltitudeM, Dimension.Length) ?? usual.AltitudeM,
        };
    }

    private double? Within(string option, string? text, (double Least, double Most) bounds, Dimension dimension = Dimension.Temperature)
    {
        if (text is null)
            return null;
        string Shown(double v) => dimension switch
        {
            Dimension.Length => Notation.Height(v),
            Dimension.Volume => Notation.Volume(v),
            _ => Notation.Target(v),
        };
        var read = QuantityReader.Read(text, dimension, Notation.BareUnit(dimension));
        return read.Ok && read.Value >= bounds.Least && read.Value <= bounds.Most ? read.Value : throw new UsageException(
            $"{option}: {(read.Ok ? $"{Shown(read.Value)} cannot be right" : What(read, text))}; write {Shown(bounds.Least)} to {Shown(bounds.Most)}");
    }

    /// <summary>What is wrong with a quantity that was read or not; what is right the caller says, whose bounds are narrower.</summary>
    internal static string What(QuantityRead read, string text) => read.Fault ?? $"'{text}' cannot be right";

    private SpargeMethod SpargeMethod(SpargeMethod usual) => Sparge?.ToLowerInvariant() switch
    {
        null => usual,
        "fly" => Core.Planning.SpargeMethod.Fly,
        "batch" => Core.Planning.SpargeMethod.Batch,
        "none" => Core.Planning.SpargeMethod.None,
        _ => throw new UsageException($"--sparge: '{Sparge}' is not known; write fly, batch or none"),
    };

    private MattersMost Aim(MattersMost usual) => Matters?.ToLowerInvariant() switch
    {
        null => usual,
        "gravity" => MattersMost.Gravity,
        "volume" => MattersMost.Volume,
        "time" => MattersMost.Time,
        _ => throw new UsageException($"--matters: '{Matters}' is not known; write gravity, volume or time"),
    };

    private BitternessFormula Formula(BitternessFormula usual) => Bitterness?.ToLowerInvariant() switch
    {
        null => usual,
        "tinseth" => BitternessFormula.Tinseth,
        "rager" => BitternessFormula.Rager,
        _ => throw new UsageException($"--bitterness: '{Bitterness}' is not known; write tinseth or rager"),
    };

    private MashHeating? MashWay() => Mash?.ToLowerInvariant() switch
    {
        null => null,
        "direct" => MashHeating.Direct,
        "water" => MashHeating.HotWater,
        "coil" => MashHeating.Coil,
        "decoction" => MashHeating.Decoction,
        _ => throw new UsageException($"--mash: '{Mash}' is not known; write direct, water, coil or decoction"),
    };

    private static DateTimeOffset? Moment(string option, string? text)
    {
        if (text is null)
            return null;
        return DateTimeOffset.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.AssumeLocal, out var moment)
            ? moment
            : throw new UsageException($"{option}: '{text}' is no date and time; write 2026-05-30T08:30, with Z or +02:00 for a zone");
    }
}
