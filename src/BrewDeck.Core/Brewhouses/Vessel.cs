using System.Collections.Immutable;
using BrewDeck.Core.Physics;

namespace BrewDeck.Core.Brewhouses;

/// <summary>What a vessel does on a brew day; one vessel may do several of these.</summary>
[Flags]
public enum VesselRoles
{
    None = 0,
    HotLiquor = 1,
    Mash = 2,
    Boil = 4,
    Lauter = 8,
    Whirlpool = 16,
}

/// <summary>One vessel with its heat, its losses and what it keeps back.</summary>
public sealed record Vessel
{
    /// <summary>Short name used in files and on the deck, such as <c>liquor</c>, <c>tun</c>, <c>kettle</c>.</summary>
    public required string Id { get; init; }

    public required string Name { get; init; }

    public required VesselRoles Roles { get; init; }

    /// <summary>To the brim with the rings that are on, in litres.</summary>
    public required double CapacityL { get; init; }

    /// <summary>What each further extension ring adds, litres; 0 without rings.</summary>
    public double RingL { get; init; }

    /// <summary>Rings that can be put on, one on the other.</summary>
    public int Rings { get; init; }

    /// <summary>Rings that are on today, counted in the capacity.</summary>
    public int RingsOn { get; init; }

    /// <summary>Kept free below the brim: foam and stirring, in litres.</summary>
    public required double HeadroomL { get; init; }

    /// <summary>Stays behind below the outlet, in litres.</summary>
    public required double DeadSpaceL { get; init; }

    /// <summary>Inside diameter in metres, for readings by depth; null when the vessel has its own scale only.</summary>
    public double? DiameterM { get; init; }

    /// <summary>Free surface, m²; of a vessel without a diameter as if it were as wide as high.</summary>
    public double SurfaceM2 => Cylinder.AreaM2(DiameterM ?? Math.Cbrt(4 * CapacityL / 1000 / Math.PI));

    /// <summary>Of its outlet above the floor, m; null: not told.</summary>
    public double? OutletM { get; init; }

    /// <summary>Of the end through which liquid comes in above the floor, m; null: not told.</summary>
    public double? InletM { get; init; }

    /// <summary>Id of the vessel to which a fixed pipe leads from its outlet, so that no hose is moved for it; empty: none.</summary>
    public string PipedTo { get; init; } = "";

    /// <summary>Of the empty vessel with its fittings, J/K.</summary>
    public required double HeatCapacityJPerK { get; init; }

    /// <summary>Heat lost to the room with the lid on, W/K.</summary>
    public required double LossWPerK { get; init; }

    public ImmutableArray<Element> Elements { get; init; } = [];

    /// <summary>Steam or gas; null without.</summary>
    public Burner? Burner { get; init; }

    public FalseBottom? FalseBottom { get; init; }

    /// <summary>Most liquid or mash that may stand in it, in litres.</summary>
    public double WorkingL => CapacityL - HeadroomL;

    /// <summary>Something warms it besides what flows in.</summary>
    public bool IsHeated => !Elements.IsEmpty || Burner is not null;

    /// <summary>Sum of the ratings of its elements and of its steam or gas, W.</summary>
    public double RatedW => Elements.Sum(e => e.PowerW) + (Burner?.NetW ?? 0);

    /// <summary>Litres that cover all that heats it; 0 without heat.</summary>
    public double CoverL
    {
        get
        {
            var most = Burner?.CoverL ?? 0;
            foreach (var element in Elements)
                most = Math.Max(most, element.CoverL);
            return most;
        }
    }
}

public enum HeatMedium
{
    Steam,
    Gas,
}

/// <summary>Heat that needs no circuit: a steam jacket or a flame under the vessel.</summary>
/// <param name="NetW">What reaches the liquid at full heat, W.</param>
/// <param name="CoverL">Litres that cover the heated wall; it is never on below that.</param>
public sealed record Burner(HeatMedium Medium, double NetW, double CoverL);

/// <summary>An electric element.</summary>
/// <param name="PowerW">Rating at the circuit's voltage, W.</param>
/// <param name="NetFraction">Share of the rating that reaches the liquid, 0..1.</param>
/// <param name="CoverL">Litres in the vessel that cover it; it is never on below that.</param>
/// <param name="CircuitId">The circuit that it is plugged into.</param>
public sealed record Element(double PowerW, double NetFraction, double CoverL, string CircuitId);

/// <summary>The perforated plate under the grain bed.</summary>
/// <param name="DiameterM">Diameter, m.</param>
/// <param name="RatedLoadKg">Load it is rated for, kg.</param>
public sealed record FalseBottom(double DiameterM, double RatedLoadKg);
