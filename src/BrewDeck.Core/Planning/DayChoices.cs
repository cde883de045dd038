using System.Collections.Immutable;
using BrewDeck.Core.Waters;

namespace BrewDeck.Core.Planning;

public enum SpargeMethod
{
    Fly,
    Batch,
    None,
}

/// <summary>How bitterness is reckoned; both take minutes at 100 °C, so hops below the boil and at altitude count for what they see.</summary>
public enum BitternessFormula
{
    Tinseth,
    Rager,
}

/// <summary>What the brewer would rather have right when not everything can be.</summary>
public enum MattersMost
{
    Gravity,
    Volume,
    Time,
}

/// <summary>What the brewer decides or measures for one day.</summary>
public sealed record DayChoices
{
    /// <summary>When setting up begins; null: when the run is started.</summary>
    public DateTimeOffset? Start { get; init; }

    /// <summary>When the wort should be pitched and the plant clean; sets the start when that is not given.</summary>
    public DateTimeOffset? Finish { get; init; }

    public double SourceWaterC { get; init; } = 10;

    public double AmbientC { get; init; } = 18;

    public double GrainC { get; init; } = 18;

    /// <summary>Above the sea, m.</summary>
    public double AltitudeM { get; init; }

    /// <summary>Cold wort into the fermenter, litres at 20 °C; null: as the recipe says.</summary>
    public double? BatchL { get; init; }

    public SpargeMethod Sparge { get; init; } = SpargeMethod.Fly;

    public BitternessFormula Bitterness { get; init; }

    /// <summary>The order of remedies goes by it.</summary>
    public MattersMost MattersMost { get; init; }

    /// <summary>From rest to rest; null: as the brewhouse usually does.</summary>
    public Brewhouses.MashHeating? MashHeating { get; init; }

    /// <summary>Sockets in use today; null: all circuits of the brewhouse.</summary>
    public int? Circuits { get; init; }

    /// <summary>Analysis of the water and what is on hand to treat it; null: treated as the brewer always does.</summary>
    public WaterSupply? Water { get; init; }

    /// <summary>What the water is to become; null: as the recipe says.</summary>
    public WaterTarget? WaterTarget { get; init; }

    /// <summary>Alpha acid as measured, fraction by hop name.</summary>
    public ImmutableDictionary<string, double> MeasuredAlpha { get; init; } = ImmutableDictionary<string, double>.Empty;

    /// <summary>Grist line replaced by what is on hand, by name.</summary>
    public ImmutableDictionary<string, Recipes.GristLine> GristOnHand { get; init; } = ImmutableDictionary<string, Recipes.GristLine>.Empty;

    /// <summary>Hop replaced by what is on hand, by name: its name and alpha acid fraction; masses keep the bitterness.</summary>
    public ImmutableDictionary<string, HopOnHand> HopsOnHand { get; init; } = ImmutableDictionary<string, HopOnHand>.Empty;
}

/// <param name="AlphaFraction">Alpha acid, 0..1.</param>
public sealed record HopOnHand(string Name, double AlphaFraction);
