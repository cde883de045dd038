namespace BrewDeck.Simulator.Truth;

/// <summary>Names that readings and steps use beside the vessels of the profile.</summary>
internal static class VirtualIds
{
    public const string Fermenter = "fermenter";

    public const string Grain = "grain";

    public const string Source = "source";

    public const string Room = "room";
}
