namespace BrewDeck.Core.Planning;

/// <summary>Labels of steps that remedies put on the run sheet, by which their words and acts are told apart.</summary>
public static class StepLabels
{
    /// <summary>A boil after the knock-out: the heat is switched on for it, and must be switched off after it.</summary>
    public const string Again = "again";

    /// <summary>Wort in the fermenter that is left to the room; without it, it is chilled.</summary>
    public const string Room = "room";
}
