using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck;

/// <summary>
/// What can be believed of a quantity at all, in canonical units. A caller's own limits are narrower.
/// </summary>
public readonly record struct QuantityRange(double Least, double Most)
{
    public bool Holds(double value) => value >= Least && value <= Most;

    /// <summary>The widest belief for a dimension.</summary>
    public static QuantityRange Of(Dimension dimension) => dimension switch
    {
        Dimension.Volume or Dimension.Mass => new(0, 100_000),
        Dimension.Temperature => new(-60, 300),
        Dimension.TemperatureDifference => new(-300, 300),
        Dimension.Gravity => new(0.95, 1.25),
        Dimension.Time => new(0, 400 * 86_400),
        Dimension.Power or Dimension.HeatTransfer => new(0, 1e6),
        Dimension.Pressure or Dimension.HeatCapacity => new(0, 1e8),
        // from the shores of the lowest lakes to the highest towns: a length is also a height above the sea
        Dimension.Length => new(-500, 6000),
        Dimension.Flow or Dimension.Evaporation => new(0, 10_000),
        Dimension.Colour => new(0, 3000),
        Dimension.Fraction => new(0, 1),
        Dimension.Thickness => new(0, 1000),
        Dimension.Voltage or Dimension.Current or Dimension.Bitterness => new(0, 1000),
        Dimension.Concentration => new(-1000, 100_000),
        Dimension.Acidity => new(0, 14),
        Dimension.PitchRate => new(0, 20),
        _ => new(-1e9, 1e9),
    };

    /// <summary>What would be right.</summary>
    internal static string Example(Dimension dimension, Notation notation) => dimension switch
    {
        Dimension.Volume => notation.Text("write a volume such as 65 L or 6.5 gal"),
        Dimension.Mass => notation.Text("write a mass such as 5.2 kg, 450 g or 11 lb 4 oz"),
        Dimension.Temperature => notation.Text("write a temperature such as 66 °C or 152 °F"),
        Dimension.TemperatureDifference => notation.Text("write a difference such as 2 K or 4 °F"),
        Dimension.Gravity => notation.Text("write a gravity such as 1.048 or 12 °P"),
        Dimension.Time => notation.Text("write a time such as 60 min, 1 h 30 or 1:30"),
        Dimension.Power => notation.Text("write a power such as 5.5 kW or 3500 W"),
        Dimension.Pressure => notation.Text("write a pressure such as 0.8 bar or 12 psi"),
        Dimension.Length => notation.Text("write a length such as 44 cm, 0.44 m or 17.3 in"),
        Dimension.Flow => notation.Text("write a flow such as 6 L/min or 1.5 gal/min"),
        Dimension.Colour => notation.Text("write a colour such as 8 EBC, 4 SRM or 3.5 °L"),
        Dimension.Fraction => notation.Text("write a share such as 75 % or 0.75"),
        Dimension.HeatCapacity => notation.Text("write a heat capacity such as 8.5 kJ/K"),
        Dimension.HeatTransfer => notation.Text("write a heat transfer such as 4.5 W/K"),
        Dimension.Thickness => notation.Text("write litres per kilogram such as 3 L/kg or 1.25 qt/lb"),
        Dimension.Voltage => notation.Text("write a voltage such as 240 V"),
        Dimension.Current => notation.Text("write a current such as 16 A"),
        Dimension.Evaporation => notation.Text("write an evaporation such as 4.5 kg/h"),
        Dimension.Bitterness => notation.Text("write a bitterness such as 32 IBU"),
        Dimension.Concentration => notation.Text("write a concentration such as 85 mg/L"),
        Dimension.Acidity => notation.Text("write a pH such as 5.4"),
        Dimension.PitchRate => notation.Text("write million cells per mL and °P, such as 0.75"),
        _ => notation.Text("write a plain number such as 3.5"),
    };
}
