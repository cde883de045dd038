using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using CsCheck;

namespace BrewDeck.Tests.Laws;

/// <summary>Sensible three-vessel brewhouses from a kitchen's to a pilot plant's.</summary>
internal static class AnyBrewhouse
{
    private static readonly Gen<Habits> AnyHabits =
        from thickness in Gen.Double[2.6, 3.4]
        from conversion in Gen.Double[0.92, 0.99]
        from absorption in Gen.Double[0.8, 1.15]
        from stages in Gen.Double[1, 4]
        from hopAbsorption in Gen.Double[4, 9]
        from spargeC in Gen.Double[72, 78]
        select new Habits
        {
            MashThicknessLPerKg = thickness,
            ConversionYield = conversion,
            AbsorptionLPerKg = absorption,
            SpargeStages = stages,
            HopAbsorptionLPerKg = hopAbsorption,
            SpargeC = spargeC,
            RunoffLPerMin = 1,
            EvaporationKgPerH = 1,
            TrubL = 1,
            LineLossL = 1,
        };

    /// <summary>Per litre of the kettle: what a larger plant has more of.</summary>
    private static readonly Gen<Habits> HabitsPerLitre =
        from habits in AnyHabits
        from runoff in Gen.Double[0.01, 0.03]
        from evaporation in Gen.Double[0.04, 0.07]
        from trub in Gen.Double[0.01, 0.03]
        from line in Gen.Double[0, 0.02]
        select habits with { RunoffLPerMin = runoff, EvaporationKgPerH = evaporation, TrubL = trub, LineLossL = line };

    public static readonly Gen<Brewhouse> All =
        from litres in Gen.Double[45, 220]
        from perLitre in HabitsPerLitre
        from wattsPerL in Gen.Double[65, 100]
        from oneCircuit in Gen.Bool
        from heatedTun in Gen.Bool
        from chiller in Gen.Enum<ChillerKind>()
        from losses in Gen.Double[0.05, 0.13].Array[3]
        select Built(litres, perLitre, litres * wattsPerL, oneCircuit, heatedTun, chiller, losses);

    private static Brewhouse Built(
        double litres, Habits perLitre, double watts, bool oneCircuit, bool heatedTun, ChillerKind chiller, double[] losses) => new()
        {
            Name = "any",
            Vessels =
        [
            Vessel("liquor", VesselRoles.HotLiquor, litres, litres * losses[0], [new Element(watts, 0.96, 0.12 * litres, "A")]),
            Vessel("tun", VesselRoles.Mash, litres, litres * losses[1], heatedTun ? [new Element(0.6 * watts, 0.92, 0.1 * litres, oneCircuit ? "A" : "B")] : [])
                with { FalseBottom = new FalseBottom(0.4, 600) },
            Vessel("kettle", VesselRoles.Boil, 1.2 * litres, litres * losses[2], [new Element(watts, 0.95, 0.15 * litres, oneCircuit ? "A" : "C")]),
        ],
            Circuits = oneCircuit ? [Circuit("A", watts)] : [Circuit("A", watts), Circuit("B", watts), Circuit("C", watts)],
            Pumps = [new Pump("P1", 3.4, 0.2 * litres, 60)],
            Chiller = new Chiller(chiller, 14 * litres, 0.2 * litres, 0.09 * litres),
            Fermenter = new Fermenter("tank", 1.1 * litres, 0.1 * litres),
            Habits = perLitre with
            {
                RunoffLPerMin = perLitre.RunoffLPerMin * litres,
                EvaporationKgPerH = perLitre.EvaporationKgPerH * litres,
                TrubL = perLitre.TrubL * litres,
                LineLossL = perLitre.LineLossL * litres,
                MashHeating = heatedTun ? MashHeating.Direct : MashHeating.HotWater,
            },
        };

    private static Vessel Vessel(string id, VesselRoles roles, double litres, double lossWPerK, ImmutableArray<Element> elements) => new()
    {
        Id = id,
        Name = id,
        Roles = roles,
        CapacityL = litres,
        HeadroomL = 0.08 * litres,
        DeadSpaceL = 0.02 * litres,
        HeatCapacityJPerK = 110 * litres,
        LossWPerK = lossWPerK,
        Elements = elements,
    };

    private static Circuit Circuit(string id, double watts) => new(id, 240, 1.3 * watts / 240, 0.8);
}
