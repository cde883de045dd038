using System.Collections.Immutable;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Recipes;
using BrewDeck.Core.Waters;

namespace BrewDeck.Tests.Waters;

/// <summary>Invented waters, and a grist for them.</summary>
internal static class Given
{
    /// <summary>Hard and alkaline; balanced within a few per cent.</summary>
    public static readonly SourceWater Tap = new("quayside tap", new(92, 11, 24, 40, 55, 205), 7.5);

    public static readonly SourceWater Empty = new("empty", default, 7);

    public static readonly ImmutableArray<BrewingSalt> Shelf =
        [BrewingSalt.Gypsum, BrewingSalt.CalciumChlorideDihydrate, BrewingSalt.EpsomSalt, BrewingSalt.TableSalt, BrewingSalt.BakingSoda];

    public static readonly AcidOnHand Lactic = new(AcidKind.Lactic, 0.8);

    public static readonly WaterTarget Pale = new()
    {
        CalciumMgPerL = new(70, 120),
        MagnesiumMgPerL = new(0, 20),
        SodiumMgPerL = new(0, 40),
        ChlorideMgPerL = new(50, 70),
        SulphateMgPerL = new(140, 180),
        MashPh = 5.4,
        SpargePh = 5.6,
    };

    public static readonly ImmutableArray<GristLine> PaleGrist = [new("pale malt", 8, 0.81, 0.04, 6, GristUse.Mash)];

    public static readonly WaterNeed Need = new(30, 24, 25, 40, PaleGrist);

    public static WaterSupply Supply(SourceWater? source = null, SourceWater? soft = null, AcidOnHand? acid = null) => new()
    {
        Source = source ?? Tap,
        Soft = soft,
        Salts = Shelf,
        Acid = acid,
    };

    public static GristLine Malt(double kg, double ebc, MaltKind? kind = null) =>
        new("malt", kg, 0.8, 0.04, ebc, GristUse.Mash) { Kind = kind };
}
