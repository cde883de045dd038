using System.Collections.Immutable;
using BrewDeck.Core.Physics;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Reckoning;

/// <summary>Elements on the mains.</summary>
internal static class ElementSums
{
    public static ImmutableArray<Sum> All { get; } =
    [
        new(
            "element",
            "Element on the mains",
            [
                new SumInput.Quantity("power", "rated power", Dimension.Power, "W", 50, 1e5, "5.5 kW"),
                Volts("rated", "rated for", "230 V"), Volts("supply", "mains", "230 V"),
            ],
            [
                new("power_kw", "gives", "kW", "0.00"), new("current_a", "draws", "A"), new("breaker_a", "breaker for hours of it, at least", "A"),
                new("low_kw", "with the mains at their lowest", "kW", "0.00"), new("resistance_ohm", "resistance", "ohm"),
            ],
            "Ohm's law; power goes with the voltage squared",
            "EN 50160: mains 10 % either way; 80 % of a breaker for hours: NEC, a caution elsewhere",
            "a resistive element on one phase",
            v => Element(v["power"], v["rated"], v["supply"]),
            "A sum is no wiring plan: mains near water are an electrician's work, by the local code, behind a residual-current device of 30 mA."),
    ];

    private static SumInput.Quantity Volts(string name, Phrase label, string example) => new(name, label, Dimension.Voltage, "V", 90, 500, example, "230 V");

    private static double[] Element(double watts, double rated, double supply)
    {
        var given = Electrical.WattsAtVoltage(watts, rated, supply);
        var amperes = Electrical.CurrentA(given, supply);
        return
        [
            given / 1000, amperes, Electrical.RatingForContinuousA(amperes),
            Electrical.WattsAtVoltage(watts, rated, Electrical.LowestSupplyVolts(supply)) / 1000, Electrical.ResistanceOhm(watts, rated),
        ];
    }
}
