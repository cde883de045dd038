namespace BrewDeck.Deck;

/// <summary>What a quantity measures. The canonical unit of each stands beside it.</summary>
public enum Dimension
{
    /// <summary>L.</summary>
    Volume,

    /// <summary>kg.</summary>
    Mass,

    /// <summary>°C.</summary>
    Temperature,

    /// <summary>K.</summary>
    TemperatureDifference,

    /// <summary>SG 20/20.</summary>
    Gravity,

    /// <summary>s.</summary>
    Time,

    /// <summary>W.</summary>
    Power,

    /// <summary>Pa, above the room's.</summary>
    Pressure,

    /// <summary>m.</summary>
    Length,

    /// <summary>L/min.</summary>
    Flow,

    /// <summary>°EBC.</summary>
    Colour,

    /// <summary>0 to 1.</summary>
    Fraction,

    /// <summary>J/K.</summary>
    HeatCapacity,

    /// <summary>W/K.</summary>
    HeatTransfer,

    /// <summary>L/kg.</summary>
    Thickness,

    /// <summary>V.</summary>
    Voltage,

    /// <summary>A.</summary>
    Current,

    /// <summary>kg/h.</summary>
    Evaporation,

    /// <summary>IBU.</summary>
    Bitterness,

    /// <summary>mg/L.</summary>
    Concentration,

    /// <summary>pH.</summary>
    Acidity,

    /// <summary>Million cells per mL and degree Plato.</summary>
    PitchRate,

    /// <summary>A plain number.</summary>
    Number,
}
