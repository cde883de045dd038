namespace BrewDeck.Core.Planning;

/// <summary>Labels of steps, by which their words and acts are told apart.</summary>
public static class StepLabels
{
    /// <summary>A boil after the knock-out: the heat is switched on for it, and must be switched off after it.</summary>
    public const string Again = "again";

    /// <summary>Water into a vessel whose own heat is on: both together would bring it too far.</summary>
    public const string HeatOff = "heat-off";

    /// <summary>Liquor that is pumped to where it can be heated, or back.</summary>
    public const string Liquor = "liquor";

    /// <summary>Wort that is pumped out of a kettle that has failed, to be boiled where it goes.</summary>
    public const string ToBoil = "to-boil";

    /// <summary>Wort in the fermenter that is left to the room; without it, it is chilled.</summary>
    public const string Room = "room";

    /// <summary>Sugar, syrup or malt extract into the boiling kettle: it sinks, and burns on a hot element.</summary>
    public const string Sugar = "sugar";
}
