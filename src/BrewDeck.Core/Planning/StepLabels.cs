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

    /// <summary>Wort in the fermenter that is left to the room; with neither label, it is chilled.</summary>
    public const string Room = "room";

    /// <summary>Wort in the fermenter that is left to the fermenter's own cooling.</summary>
    public const string OwnCooling = "own-cooling";

    /// <summary>What is cleaned and is no vessel: the basket of a vessel that the grain is lifted out of.</summary>
    public const string Basket = "basket";

    public const string Chiller = "chiller";

    /// <summary>The last of cleaning: hoses, pump, floor.</summary>
    public const string Down = "down";

    /// <summary>How a bed is freed: left alone, lifted with liquor from below, or cut.</summary>
    public const string RestBed = "rest", Underlet = "underlet", Rake = "rake";

    /// <summary>Sugar, syrup or malt extract into the boiling kettle: it sinks, and burns on a hot element.</summary>
    public const string Sugar = "sugar";
}
